// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/section.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

namespace miterbook {

namespace {

using Outline = std::vector<SectionPoint>;

constexpr int arcSteps = 12; ///< straight pieces of a quarter turn

/// Sections in a unit square: the back from (0,0) to (1,0), then the face back to (0,...).
Outline withBack(Outline face) {
    Outline whole{{0, 0}, {1, 0}};
    for (const SectionPoint& point : face) {
        if (whole.back() != point)
            whole.push_back(point);
    }
    if (whole.back() == whole.front())
        whole.pop_back();
    return whole;
}

/// An arc of an ellipse, angles in quarter turns from the direction of the width.
Outline arc(SectionPoint centre, double along, double out, double from, double to) {
    Outline points;
    const int steps = std::max(1, static_cast<int>(std::lround(std::abs(to - from) * arcSteps)));
    for (int i = 0; i <= steps; ++i) {
        const double turn = (from + (to - from) * i / steps) * std::numbers::pi / 2;
        points.push_back(
            {centre.along + along * std::cos(turn), centre.out + out * std::sin(turn)});
    }
    return points;
}

Outline joined(Outline first, const Outline& second) {
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

/// Both edges of the face rounded by a small radius.
Outline easedEdge(double across, double thick) {
    return joined(arc({1 - across, 1 - thick}, across, thick, 0, 1),
        arc({across, 1 - thick}, across, thick, 1, 2));
}

/// From the full thickness down to `low` in one double curve, the thin edge flat.
Outline ogee(double low) {
    constexpr double from = 0.72;
    constexpr double to = 0.14;
    Outline face{{1, 1}};
    for (int i = 0; i <= 2 * arcSteps; ++i) {
        const double part = double(i) / (2 * arcSteps);
        const double fall = (1 - std::cos(std::numbers::pi * part)) / 2;
        face.push_back({from + (to - from) * part, 1 - (1 - low) * fall});
    }
    face.push_back({0, low});
    return face;
}

/// `ratio`: thickness over width, so that radii come out round.
Outline unitOutline(Section section, double ratio) {
    switch (section) {
    case Section::squareEdge:
        return {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
    case Section::easedEdge: {
        const double radius = 0.2 * std::min(1.0, ratio);
        return withBack(easedEdge(radius, radius / ratio));
    }
    case Section::beveled:
        return withBack({{1, 1}, {0.3, 1}, {0, 0.45}});
    case Section::bullnose: {
        const double across = std::min(0.5, ratio / 2);
        Outline nose = arc({across, 0.5}, across, 0.5, 1, 3);
        return joined({{1, 0}, {1, 1}}, nose);
    }
    case Section::quarterRound:
        return withBack(arc({0, 0}, 1, 1, 0, 1));
    case Section::cove:
        return withBack(joined({{1, 0.2}}, joined(arc({1, 1}, 0.8, 0.8, -1, -2), {{0, 1}})));
    case Section::ogee:
        return withBack(ogee(0.45));
    case Section::stepped:
        return withBack({{1, 1}, {0.5, 1}, {0.5, 0.75}, {0.18, 0.75}, {0.18, 0.5}, {0, 0.5}});
    case Section::round:
        return arc({0.5, 0.5}, 0.5, 0.5, 0, 4 - 1.0 / arcSteps);
    }
    return {};
}

/// What of an outline has `inside` over 0, cut where it changes sign [pub: Sutherland and Hodgman,
/// Reentrant Polygon Clipping, 1974].
Outline cut(const Outline& outline, const std::function<double(const SectionPoint&)>& inside) {
    Outline kept;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const SectionPoint& from = outline[i];
        const SectionPoint& to = outline[(i + 1) % outline.size()];
        const double a = inside(from);
        const double b = inside(to);
        if (a >= 0)
            kept.push_back(from);
        if ((a >= 0) != (b >= 0)) {
            const double part = a / (a - b);
            kept.push_back({from.along + (to.along - from.along) * part,
                from.out + (to.out - from.out) * part});
        }
    }
    return kept;
}

} // namespace

std::vector<SectionPoint> sectionOutline(Section section, double thickness, double width) {
    Outline outline = unitOutline(section, thickness / width);
    for (SectionPoint& point : outline)
        point = {point.along * width, point.out * thickness};
    return outline;
}

std::vector<SectionPoint> sprungOutline(
    Section section, double thickness, double width, double spring) {
    const double slope = std::tan(spring * std::numbers::pi / 180);
    const Outline flat = sectionOutline(section, thickness, width);
    const Outline offWall = cut(flat,
        [&](const SectionPoint& point) { return point.along - (thickness - point.out) / slope; });
    return cut(offWall, [&](const SectionPoint& point) {
        return width - point.along - (thickness - point.out) * slope;
    });
}

} // namespace miterbook
