// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/page_breaker.h"

namespace miterbook {

namespace {

class PageBreaker {
public:
    PageBreaker(const std::vector<Slab>& slabs, double height)
        : m_slabs(slabs)
        , m_height(height)
        , m_pages(1) {}

    std::vector<SetPage> pages() {
        std::size_t at = 0;
        while (at < m_slabs.size()) {
            const std::size_t end = endOfRun(at);
            if (m_top + heightOf(at, end) <= m_height)
                at = place(at, end);
            else if (m_pages.back().empty())
                at = place(at, at + 1); // more than a page: it breaks where it must
            else
                newPage();
        }
        return std::move(m_pages);
    }

private:
    /// One past the last slab that is kept together with this one.
    std::size_t endOfRun(std::size_t at) const {
        while (at + 1 < m_slabs.size() && m_slabs[at].keepWithNext)
            ++at;
        return at + 1;
    }

    bool beginsPage(std::size_t at, std::size_t first) const {
        return at == first && m_pages.back().empty();
    }

    double heightOf(std::size_t first, std::size_t end) const {
        double height = 0;
        for (std::size_t i = first; i < end; ++i) {
            const Slab& slab = m_slabs[i];
            if (!beginsPage(i, first))
                height += slab.before + slab.block.height;
            else
                height += (slab.head ? slab.head->height : 0.0)
                    + (slab.atTop ? slab.atTop->height : slab.block.height);
        }
        return height;
    }

    std::size_t place(std::size_t first, std::size_t end) {
        for (std::size_t i = first; i < end; ++i) {
            const Slab& slab = m_slabs[i];
            if (beginsPage(i, first)) {
                if (slab.head)
                    put(*slab.head);
                put(slab.atTop ? *slab.atTop : slab.block);
            } else {
                m_top += slab.before;
                put(slab.block);
            }
        }
        return end;
    }

    void put(const SetBlock& block) {
        m_pages.back().push_back({&block, m_top});
        m_top += block.height;
    }

    void newPage() {
        m_pages.emplace_back();
        m_top = 0;
    }

    const std::vector<Slab>& m_slabs;
    double m_height;
    double m_top = 0;
    std::vector<SetPage> m_pages;
};

} // namespace

std::vector<SetPage> breakPages(const std::vector<Slab>& slabs, double height) {
    return PageBreaker(slabs, height).pages();
}

} // namespace miterbook
