// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/output_file.h"

#include <QSaveFile>

namespace miterbook {

Result<void> writeOutput(const std::string& path, const std::string& text, Console& console) {
    if (path == "-") {
        console.out << text;
        return {};
    }
    QSaveFile file(QString::fromStdString(path));
    const auto size = static_cast<qint64>(text.size());
    if (file.open(QIODevice::WriteOnly) && file.write(text.data(), size) == size && file.commit())
        return {};
    return Error{
        Fault::storage, path + " could not be written: " + file.errorString().toStdString()};
}

} // namespace miterbook
