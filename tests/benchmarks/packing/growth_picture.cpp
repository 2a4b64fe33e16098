// SPDX-License-Identifier: GPL-3.0-or-later
#include "benchmarks/packing/growth.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <sstream>
#include <vector>

namespace miterbook::packing {

namespace {

// One of two charts beside each other, both axes by powers of ten.
class Chart {
public:
    Chart(std::ostringstream& out, double x, const char* title, double low, double high)
        : m_out(out)
        , m_x(x)
        , m_low(std::log10(low))
        , m_high(std::log10(high)) {
        m_out << "<text x='" << x << "' y='30' font-size='15'>" << title << "</text>\n";
        for (double pieces : {100.0, 1000.0, 10'000.0})
            line(across(pieces), top, across(pieces), bottom, std::to_string(int(pieces)),
                across(pieces) - 16, bottom + 18);
        for (double exponent = std::ceil(m_low); exponent <= m_high + 1e-9; ++exponent) {
            std::ostringstream name;
            name << std::pow(10, exponent);
            line(x, up(std::pow(10, exponent)), x + width, up(std::pow(10, exponent)), name.str(),
                x - 46, up(std::pow(10, exponent)) + 4);
        }
        m_out << "<text x='" << x + width - 48 << "' y='" << bottom + 36 << "'>pieces</text>\n";
    }

    void plot(const std::map<double, double>& points, const char* dashes, const std::string& name) {
        m_out << "<polyline fill='none' stroke='black' stroke-width='2' stroke-dasharray='"
              << dashes << "' points='";
        for (const auto& [pieces, value] : points)
            m_out << across(pieces) << ',' << up(value) << ' ';
        const auto& [pieces, value] = *points.rbegin();
        m_out << "'/>\n<text x='" << across(pieces) + 6 << "' y='" << freeHeight(up(value) + 4)
              << "'>" << name << "</text>\n";
    }

private:
    static constexpr double top = 50, bottom = 350, width = 330, letters = 14;

    double across(double pieces) const {
        return m_x + width * (std::log10(pieces) - std::log10(50)) / std::log10(1000);
    }
    double up(double value) const {
        const double part = (std::log10(std::max(value, 1e-9)) - m_low) / (m_high - m_low);
        return bottom - (bottom - top) * std::clamp(part, 0.0, 1.0);
    }
    // The nearest height upwards at which no name stands yet.
    double freeHeight(double y) {
        const auto taken = [&](double at) { return std::abs(at - y) < letters; };
        while (std::ranges::any_of(m_names, taken))
            y -= 1;
        m_names.push_back(y);
        return y;
    }
    void line(
        double x1, double y1, double x2, double y2, const std::string& name, double x, double y) {
        m_out << "<line x1='" << x1 << "' y1='" << y1 << "' x2='" << x2 << "' y2='" << y2
              << "' stroke='#bbb'/><text x='" << x << "' y='" << y << "'>" << name << "</text>\n";
    }

    std::ostringstream& m_out;
    double m_x;
    double m_low;
    double m_high;
    std::vector<double> m_names; // heights of the lines' names
};

} // namespace

std::string growthPicture(const std::vector<Growth>& all) {
    constexpr const char* dashes[] = {"none", "8 4", "3 3", "12 3 3 3"};
    std::ostringstream out;
    out << "<svg xmlns='http://www.w3.org/2000/svg' width='1000' height='410' "
           "font-family='sans-serif' font-size='12'>\n<rect width='1000' height='410' "
           "fill='white'/>\n";
    Chart time(out, 70, "Seconds to the proof, or to the limit of 5", 0.0001, 10);
    Chart memory(out, 570, "Memory, MB", 1, 1000);
    std::map<std::int64_t, std::map<double, double>> seconds;
    std::map<std::int64_t, std::map<double, double>> megabytes;
    for (const Growth& each : all) {
        seconds[each.lengths][static_cast<double>(each.pieces)] = each.seconds;
        megabytes[each.lengths][static_cast<double>(each.pieces)] = each.megabytes;
    }
    std::size_t line = 0;
    for (const auto& [lengths, points] : seconds) {
        const std::string name = std::to_string(lengths) + " lengths";
        const char* dash = dashes[line++ % 4];
        time.plot(points, dash, name);
        memory.plot(megabytes[lengths], dash, name);
    }
    out << "</svg>\n";
    return out.str();
}

} // namespace miterbook::packing
