#include "viewer/picture/paper.h"

#include <pango/pangocairo.h>

#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

template <auto destroy>
struct Destroy {
    template <class Thing>
    void operator()(Thing* thing) const {
        destroy(thing);
    }
};
using Surface = std::unique_ptr<cairo_surface_t, Destroy<cairo_surface_destroy>>;
using Context = std::unique_ptr<cairo_t, Destroy<cairo_destroy>>;
using Font = std::unique_ptr<PangoFontDescription, Destroy<pango_font_description_free>>;
using Layout = std::unique_ptr<PangoLayout, Destroy<g_object_unref>>;
using Options = std::unique_ptr<cairo_font_options_t, Destroy<cairo_font_options_destroy>>;

constexpr const char* kFontFamilies = "Inter, Noto Sans, sans-serif";

Surface surfaceOver(Image& image) {
    return Surface{cairo_image_surface_create_for_data(
        reinterpret_cast<unsigned char*>(image.pixels.data()), CAIRO_FORMAT_RGB24, image.size.width,
        image.size.height, image.size.width * static_cast<int>(sizeof(std::uint32_t)))};
}

} // namespace

/// What the drawing library needs.
class Paper::Tools {
public:
    explicit Tools(Image& image) : surface_{surfaceOver(image)}, context_{cairo_create(surface_.get())} {
        cairo_set_line_cap(pen(), CAIRO_LINE_CAP_ROUND);
        // No hinting to the grid and no colour fringes: a text looks alike at every size and on every screen.
        const Options options{cairo_font_options_create()};
        cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
        cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
        cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
        cairo_set_font_options(pen(), options.get());
    }

    cairo_t* pen() const { return context_.get(); }

    void ink(const Colour& colour) const {
        cairo_set_source_rgb(pen(), colour.red, colour.green, colour.blue);
    }

    Layout layout(const std::string& text, const TextStyle& style) const {
        Layout made{pango_cairo_create_layout(pen())};
        const Font font{pango_font_description_from_string(kFontFamilies)};
        pango_font_description_set_absolute_size(font.get(), style.size * PANGO_SCALE);
        pango_font_description_set_weight(font.get(), style.bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
        pango_layout_set_font_description(made.get(), font.get());
        pango_layout_set_text(made.get(), text.data(), static_cast<int>(text.size()));
        return made;
    }

    void outline(const PictureArea& area, double radius) const {
        constexpr double kQuarter = std::numbers::pi / 2.0;
        cairo_new_sub_path(pen());
        cairo_arc(pen(), area.right() - radius, area.top + radius, radius, -kQuarter, 0.0);
        cairo_arc(pen(), area.right() - radius, area.bottom() - radius, radius, 0.0, kQuarter);
        cairo_arc(pen(), area.left + radius, area.bottom() - radius, radius, kQuarter, 2.0 * kQuarter);
        cairo_arc(pen(), area.left + radius, area.top + radius, radius, 2.0 * kQuarter, 3.0 * kQuarter);
        cairo_close_path(pen());
    }

private:
    Surface surface_;
    Context context_;
};

Paper::Paper(Image& image) : tools_{std::make_unique<Tools>(image)} {}
Paper::~Paper() = default;

TextSize Paper::measure(const std::string& text, const TextStyle& style) const {
    const Layout layout = tools_->layout(text, style);
    int width = 0;
    int height = 0;
    pango_layout_get_size(layout.get(), &width, &height);
    return {static_cast<double>(width) / PANGO_SCALE, static_cast<double>(height) / PANGO_SCALE};
}

void Paper::write(const std::string& text, const TextStyle& style, const Spot& upperLeft) {
    cairo_t* pen = tools_->pen();
    const Layout layout = tools_->layout(text, style);
    cairo_move_to(pen, upperLeft.x, upperLeft.y);
    if (style.halo) {
        pango_cairo_layout_path(pen, layout.get());
        tools_->ink(inks::kPaper);
        cairo_set_line_width(pen, 0.3 * style.size);
        cairo_set_line_join(pen, CAIRO_LINE_JOIN_ROUND);
        cairo_stroke(pen);
        cairo_move_to(pen, upperLeft.x, upperLeft.y);
    }
    tools_->ink(style.colour);
    pango_cairo_show_layout(pen, layout.get());
}

void Paper::line(const Spot& from, const Spot& to, const Stroke& stroke) {
    cairo_t* pen = tools_->pen();
    cairo_move_to(pen, from.x, from.y);
    cairo_line_to(pen, to.x, to.y);
    tools_->ink(stroke.colour);
    cairo_set_line_width(pen, stroke.width);
    cairo_set_dash(pen, &stroke.dash, stroke.dash > 0.0 ? 1 : 0, 0.0);
    cairo_stroke(pen);
    cairo_set_dash(pen, nullptr, 0, 0.0);
}

void Paper::fill(const PictureArea& area, const Colour& colour, double cornerRadius) {
    tools_->outline(area, cornerRadius);
    tools_->ink(colour);
    cairo_fill(tools_->pen());
}

void Paper::frame(const PictureArea& area, const Stroke& stroke, double cornerRadius) {
    tools_->outline(area, cornerRadius);
    tools_->ink(stroke.colour);
    cairo_set_line_width(tools_->pen(), stroke.width);
    cairo_stroke(tools_->pen());
}

void Paper::dot(const Spot& centre, double radius, const Colour& colour) {
    cairo_new_sub_path(tools_->pen());
    cairo_arc(tools_->pen(), centre.x, centre.y, radius, 0.0, 2.0 * std::numbers::pi);
    tools_->ink(colour);
    cairo_fill(tools_->pen());
}

void Paper::circle(const Spot& centre, double radius, const Stroke& stroke) {
    cairo_new_sub_path(tools_->pen());
    cairo_arc(tools_->pen(), centre.x, centre.y, radius, 0.0, 2.0 * std::numbers::pi);
    tools_->ink(stroke.colour);
    cairo_set_line_width(tools_->pen(), stroke.width);
    cairo_stroke(tools_->pen());
}

void Paper::sign(Sign sign, const Spot& centre, double radius) {
    dot(centre, radius, sign == Sign::Cross ? inks::kBroken : inks::kQuiet);
    if (sign == Sign::Cross) {
        const double arm = 0.38 * radius;
        const Stroke stroke{inks::kWhite, 0.24 * radius};
        line({centre.x - arm, centre.y - arm}, {centre.x + arm, centre.y + arm}, stroke);
        line({centre.x - arm, centre.y + arm}, {centre.x + arm, centre.y - arm}, stroke);
        return;
    }
    const TextStyle style{.size = 1.5 * radius, .bold = true, .colour = inks::kWhite};
    const TextSize size = measure("?", style);
    write("?", style, {centre.x - size.width / 2.0, centre.y - size.height / 2.0});
}

} // namespace gapwise
