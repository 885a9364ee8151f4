#include "viewer/picture/png_file.h"

#include <cairo.h>

#include <memory>

namespace gapwise {

namespace {

struct DestroySurface {
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};

cairo_status_t appendBytes(void* text, const unsigned char* bytes, unsigned count) {
    static_cast<std::string*>(text)->append(reinterpret_cast<const char*>(bytes), count);
    return CAIRO_STATUS_SUCCESS;
}

} // namespace

Result<std::string> pngOf(const Image& image) {
    // The library takes what it could write; here it only reads.
    auto* pixels =
        const_cast<std::uint32_t*>(image.pixels.data()); // NOLINT(cppcoreguidelines-pro-type-const-cast)
    const std::unique_ptr<cairo_surface_t, DestroySurface> surface{cairo_image_surface_create_for_data(
        reinterpret_cast<unsigned char*>(pixels), CAIRO_FORMAT_RGB24, image.size.width, image.size.height,
        image.size.width * static_cast<int>(sizeof(std::uint32_t)))};
    std::string bytes;
    const cairo_status_t status = cairo_surface_write_to_png_stream(surface.get(), appendBytes, &bytes);
    if (status != CAIRO_STATUS_SUCCESS)
        return Error{.where = "picture",
                     .found = cairo_status_to_string(status),
                     .allowed = "memory for a picture of this size"};
    return bytes;
}

} // namespace gapwise
