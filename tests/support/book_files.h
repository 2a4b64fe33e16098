// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/book_file.h"
#include "support/small_book.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <memory>
#include <string>

namespace miterbook {

/// Database drivers want an application object; a test program that includes this has one.
class QtCoreEnvironment final : public testing::Environment {
public:
    void SetUp() override {
        static int count = 1;
        static char name[] = "miterbook-test";
        static char* arguments[] = {name, nullptr};
        m_application = std::make_unique<QCoreApplication>(count, arguments);
    }
    void TearDown() override { m_application.reset(); }

private:
    std::unique_ptr<QCoreApplication> m_application;
};

inline testing::Environment* const qtCore = testing::AddGlobalTestEnvironment(
    new QtCoreEnvironment);

/// A folder that goes with the test, with a place for a book.
class BookFolder {
public:
    std::string file(const std::string& name) const {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }
    std::string book() const { return file("shop.miterbook"); }
    std::string path() const { return m_folder.path().toStdString(); }

private:
    /// In memory where the machine has such a place: a test makes thousands of synced commits, and
    /// what a killed program leaves behind is the same there.
    static QString place() {
        const QString memory = QStringLiteral("/dev/shm");
        const QString base = QFileInfo(memory).isWritable() ? memory : QDir::tempPath();
        return base + QStringLiteral("/miterbook-test-XXXXXX");
    }

    QTemporaryDir m_folder{place()};
};

/// Everything that a file holds, all plans opened.
Result<Book> loadWhole(Keeper& keeper);

std::string bytesOf(const std::string& path);
void writeBytes(const std::string& path, const std::string& bytes);

} // namespace miterbook
