// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>

namespace miterbook {

/// The content of a file. Copies share it: a book is copied more often than a sheet is read.
class Bytes {
public:
    Bytes() = default;
    explicit Bytes(std::string content)
        : m_content(std::make_shared<const std::string>(std::move(content))) {}

    const std::string& content() const {
        static const std::string none;
        return m_content ? *m_content : none;
    }
    std::size_t size() const { return content().size(); }
    bool operator==(const Bytes& other) const {
        return m_content == other.m_content || content() == other.content();
    }

private:
    std::shared_ptr<const std::string> m_content;
};

} // namespace miterbook
