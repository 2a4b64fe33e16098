// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QLabel;

namespace miterbook {

/// One sentence that the user should read, without stopping them: what was refused and why. Stays
/// until dismissed or something succeeds; told to screen readers when it appears.
class MessageStrip : public QFrame {
    Q_OBJECT
public:
    explicit MessageStrip(QWidget* parent = nullptr);

    QString sentence() const;

public Q_SLOTS:
    void say(const QString& sentence);
    void dismiss();

private:
    QLabel* m_label;
};

} // namespace miterbook
