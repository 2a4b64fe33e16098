// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QButtonGroup;
class QHBoxLayout;

namespace miterbook {

/// A row of words of which one is where the user is: written in the accent and underlined. Used for
/// the window's places and for a job's stages.
class NavBar final : public QWidget {
    Q_OBJECT
public:
    /// `name` is what a screen reader calls the row.
    explicit NavBar(const QString& name, QWidget* parent = nullptr);

    void add(const QString& word, const QString& tip);
    void setCurrent(int index);
    int current() const;
    int count() const;
    void setShown(int index, bool shown);
    void setWord(int index, const QString& word);

Q_SIGNALS:
    void chosen(int index);

private:
    QButtonGroup* m_buttons;
    QHBoxLayout* m_layout;
};

} // namespace miterbook
