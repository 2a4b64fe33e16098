// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <functional>
#include <vector>

class QListWidget;
class QStackedWidget;

namespace miterbook {

class Desk;

/// What the shop knows: a list of its forms and tables, each made when it is first looked at.
class BookPage final : public QWidget {
    Q_OBJECT
public:
    explicit BookPage(Desk& desk, QWidget* parent = nullptr);

private:
    using Make = std::function<QWidget*(Desk&)>;

    void add(const QString& title, const QString& hint, Make make);
    void addForms();
    void addTables();
    void showPage(int index);

    struct Page {
        QString title;
        QString hint;
        Make make;
        QWidget* made = nullptr;
    };

    Desk& m_desk;
    std::vector<Page> m_made;
    QListWidget* m_list;
    QStackedWidget* m_pages;
};

} // namespace miterbook
