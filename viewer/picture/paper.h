#pragma once

#include "viewer/render/image.h"
#include "viewer/scene/scene.h"

#include <memory>
#include <string>

namespace gapwise {

struct TextStyle {
    double size = 14.0; ///< Of the font, in pixels.
    bool bold = false;
    Colour colour{};
    bool halo = false; ///< A rim in the paper's colour, for text over a drawing.
};

struct TextSize {
    double width = 0.0;
    double height = 0.0;
};

struct Stroke {
    Colour colour{};
    double width = 1.0;
    double dash = 0.0; ///< Length of dashes and of the gaps between them, in pixels; 0 draws through.
};

/// The colours of texts and signs in a picture.
namespace inks {
inline constexpr Colour kText{0.122, 0.165, 0.200};
inline constexpr Colour kQuiet{0.420, 0.467, 0.502};
inline constexpr Colour kBanner{0.122, 0.165, 0.200};
inline constexpr Colour kOnBanner{0.984, 0.980, 0.965};
inline constexpr Colour kQuietOnBanner{0.788, 0.800, 0.808};
inline constexpr Colour kNotice{1.000, 0.949, 0.800};
inline constexpr Colour kOnNotice{0.353, 0.263, 0.000};
inline constexpr Colour kBroken{0.835, 0.369, 0.000};
inline constexpr Colour kPaper{0.957, 0.949, 0.925};
inline constexpr Colour kWhite{1.0, 1.0, 1.0};
} // namespace inks

enum class Sign { Cross, Question };

/// Draws texts and simple figures over an image, which must outlive it.
class Paper {
public:
    explicit Paper(Image& image);
    ~Paper();
    Paper(const Paper&) = delete;
    Paper& operator=(const Paper&) = delete;

    TextSize measure(const std::string& text, const TextStyle& style) const;
    void write(const std::string& text, const TextStyle& style, const Spot& upperLeft);
    void line(const Spot& from, const Spot& to, const Stroke& stroke);
    void fill(const PictureArea& area, const Colour& colour, double cornerRadius = 0.0);
    void frame(const PictureArea& area, const Stroke& stroke, double cornerRadius = 0.0);
    void dot(const Spot& centre, double radius, const Colour& colour);
    void circle(const Spot& centre, double radius, const Stroke& stroke);
    /// A sign in a disc of its own colour.
    void sign(Sign sign, const Spot& centre, double radius);

private:
    class Tools;
    std::unique_ptr<Tools> tools_;
};

} // namespace gapwise
