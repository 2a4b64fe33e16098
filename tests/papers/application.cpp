// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>

#include <gtest/gtest.h>

#include <memory>

namespace {

/// Fonts and printers need an application; it lives as long as the tests.
class Application : public testing::Environment {
public:
    void SetUp() override { m_application = std::make_unique<QApplication>(m_count, m_arguments); }
    void TearDown() override { m_application.reset(); }

private:
    int m_count = 1;
    char m_name[12] = "test_papers";
    char* m_arguments[2] = {m_name, nullptr};
    std::unique_ptr<QApplication> m_application;
};

const auto* const application = testing::AddGlobalTestEnvironment(new Application);

} // namespace
