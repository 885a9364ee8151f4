#include "models/check/face_words.h"

namespace gapwise {

std::string_view faceWord(FaceKind kind) {
    switch (kind) {
    case FaceKind::Rounded: return "rounded";
    case FaceKind::Marked: return "marked";
    case FaceKind::EndMark: return "lettered";
    case FaceKind::Running: return "running";
    case FaceKind::Chamfered: return "chamfered";
    case FaceKind::Dished: return "dished";
    case FaceKind::None: break;
    }
    return "reference";
}

std::string_view otherFaceWord(FaceKind kind) {
    switch (kind) {
    case FaceKind::Rounded: return "sharp";
    case FaceKind::Marked: return "plain";
    case FaceKind::EndMark: return "blank";
    case FaceKind::Running: return "back";
    case FaceKind::Chamfered: return "square";
    case FaceKind::Dished: return "hollow";
    case FaceKind::None: break;
    }
    return "other";
}

std::string_view faceTest(FaceKind kind) {
    switch (kind) {
    case FaceKind::Rounded: return "Draw a fingernail across the edge: the sharp one catches.";
    case FaceKind::Marked: return "Look for the stamped mark: only one face has it.";
    case FaceKind::EndMark: return "Look for the letter on the end: only one end has it.";
    case FaceKind::Running: return "Tilt it to the light: the running face shines evenly.";
    case FaceKind::Chamfered: return "Feel into the bore: only one end is chamfered.";
    case FaceKind::Dished: return "Lay it on the bench: it rocks on the dished face.";
    case FaceKind::None: break;
    }
    return {};
}

} // namespace gapwise
