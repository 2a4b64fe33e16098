// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/help_text.h"

#include <QObject>

namespace miterbook {

QString walkText() {
    return QObject::tr(
        "1. The book comes first. Under \"The book\", check what is marked \"starter\": stick prices, "
        "labour rates, wages and burden. Every price and hour is computed from these rows, and "
        "typing over one makes it yours.\n\n"
        "2. Enter a plan. Under \"Plans\", begin a plan for a builder. Give it levels, rooms, windows "
        "and doors: type them into the tables, paste them from a spreadsheet, or bring in the plan "
        "set's schedules as CSV files. Lengths are typed as you say them: 35 1/2, 2'11-1/2, 2-8, "
        "3068 for a size, 902mm. A room's walls are typed in order, 12' x 14'6 for a rectangle.\n\n"
        "3. Elevations and options are differences against the plan. Name them on the Plan stage, "
        "then choose where your changes go: into the base plan, or into one of them.\n\n"
        "4. Look over the takeoff. Every piece, running foot and task names the opening or room it "
        "comes from. The list beside the tables says what is wrong and what seems forgotten; "
        "opening a line of it leads to the row.\n\n"
        "5. Bid. Hours come from quantities, rates and factors, material from the sticks that the "
        "pieces really come out of. Choose markup on cost or margin on price, or your piece "
        "prices. Risk says how many of 100 such houses make money at this price, from the shop's own "
        "finished houses. The bid paper never shows cost. The plan price sheet, in the same menu, gives every "
        "plan of the set under each elevation and what each option adds.\n\n"
        "6. Order. The buy list says how many sticks of which length, with offcuts from the rack "
        "taken first. A quick cutting plan is shown at once and a better one a moment later; the "
        "line at the bottom says when it is still being looked for.\n\n"
        "7. Start the house. A house takes its own copy of the plan with its elevation and options, "
        "so that what is changed for one lot stays with it.\n\n"
        "8. Cut. In the house, measure each opening once: Tab goes the way the tape does. The sheet "
        "beside it says what is out of square and what that does. Set each stop once, longest first, "
        "tick what is cut by its number, and cut again only what was spoiled. Measure sheet, saw "
        "sheet, stick diagrams, labels and assembly sheet are papers to hang by the saw.\n\n"
        "9. Hours. Type the week: who, which house, what, and the hours of each day, 7.5 or 7.5 / 6 "
        "with six finished. Or let the timer run, or bring in a phone's notes. When a house is won, set "
        "its stage on the Houses screen: its bid is kept, and its hours are held against it. Look the "
        "week over, approve it, print the time and pay sheets.\n\n"
        "10. Review. Set a house to finished and see what it came to, which plans make money, which "
        "pieces of work lose it, and what your houses say of your labour rates. Taking a learned rate "
        "into the book changes the next bid and none that was won.\n\n"
        "There is nothing to save: what is on the screen is in the book. Every change can be "
        "undone.");
}

QString keysText() {
    return QObject::tr(
        "Everywhere\n"
        "  Alt+Home, or Esc           Houses\n"
        "  Alt+2, Alt+3, Alt+4        Plans, the book, the open plan or house\n"
        "  Ctrl+1 to Ctrl+8           the stages of a plan or house\n"
        "  Ctrl+Z, Ctrl+Shift+Z       undo, redo\n"
        "  Ctrl+F                     find rows in the table\n"
        "  F1, Ctrl+/                 how a job walks through the book, these keys\n\n"
        "In a table\n"
        "  typing, or F2              edit the cell\n"
        "  Enter, Shift+Enter         the row below, above\n"
        "  Tab, Shift+Tab             the next, previous cell that can be typed into\n"
        "  Esc                        take back what is being typed\n"
        "  Space                      tick or untick\n"
        "  Ctrl+C, Ctrl+X, Ctrl+V     copy, cut, paste cells, also from and to a spreadsheet\n"
        "  Delete                     clear cells; remove rows that are selected whole\n"
        "  Ctrl+D                     fill down\n"
        "  Ctrl+Insert                to the row for a new entry\n"
        "  Ctrl+Shift+D               copy the row\n"
        "  Ctrl+Delete                remove the row\n"
        "  F8, or a click             where a computed number comes from\n"
        "  F6, Shift+F6               leave the table\n\n"
        "Houses and plans\n"
        "  Enter                      open\n"
        "  F2                         edit the cell\n"
        "  Ctrl+Shift+N               start a house, begin a plan\n"
        "  Ctrl+Shift+T               houses in trouble first\n"
        "  Ctrl+B                     bring in plan files\n\n"
        "Hours\n"
        "  Alt+Page Up, Alt+Page Down the week before, after");
}

QString aboutText() {
    return QObject::tr(
        "Miterbook is a finish carpenter's book for a house: from the builder's plan set to the "
        "bid, the lumber order, and on.\n\n"
        "It is free software under the GNU General Public License, version 3 or later, and comes "
        "without any warranty. It does not use the network.\n\n"
        "Rates and prices of a new book are starters. They are no offer and no advice: check them "
        "before you sign anything. Local code governs over anything said here.");
}

} // namespace miterbook
