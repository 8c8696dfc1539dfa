// Whoever stands on a ladder or wears gloves must hit what the job page offers: each control of it
// that takes a click is at least 9 mm high.

#include "app/desktop/AccessibleParts.h"
#include "app/desktop/DeskStyle.h"
#include "tests/support/JobBench.h"
#include "tests/support/Premises.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

constexpr double leastMm = 9, roundedMm = 0.01; // 34 pixels of 96 to the inch

double heightMm(const QWidget &widget, int pixels)
{
    return pixels * 25.4 / widget.logicalDpiY();
}

/// What is hit in it: itself, or each of its parts.
double lowestMm(QWidget &widget)
{
    auto *parts = dynamic_cast<AccessibleParts *>(&widget);
    if (!parts)
        return heightMm(widget, widget.height());
    double lowest = 1000;
    for (int i = 0; i < parts->partCount(); ++i)
        lowest = std::min(lowest, heightMm(widget, parts->partRect(i).height()));
    return lowest;
}

bool isHit(const QWidget &widget)
{
    // A view scrolls, and its rows are chosen by keys; the editor of a list is within it.
    return widget.isVisible() && widget.focusPolicy() != Qt::NoFocus && !widget.focusProxy() &&
           !qobject_cast<const QAbstractItemView *>(&widget) &&
           !qobject_cast<const QComboBox *>(widget.parentWidget()) &&
           (qobject_cast<const QAbstractButton *>(&widget) ||
            qobject_cast<const QLineEdit *>(&widget) || qobject_cast<const QComboBox *>(&widget) ||
            qobject_cast<const QPlainTextEdit *>(&widget) ||
            dynamic_cast<const AccessibleParts *>(&widget));
}

} // namespace

class TargetsTest : public QObject
{
    Q_OBJECT

private slots:
    void everyControlIsHighEnough_data()
    {
        QTest::addColumn<OrderFields>("fields");
        QTest::addColumn<QList<QJsonObject>>("facts");
        QTest::newRow("basic rate") << briFields() << briFacts().mid(0, 13);
        QTest::newRow("basic rate, done") << briFields() << briFacts();
        QTest::newRow("analog") << analogFields() << analogFacts().mid(0, 5);
    }
    void everyControlIsHighEnough()
    {
        QFETCH(OrderFields, fields);
        QFETCH(QList<QJsonObject>, facts);
        applyTheme(*qApp, Look::Light, 100);
        JobBench bench({fields});
        bench.at(100);
        take(bench.records(), fields, facts);
        bench.window().openOrder(fields["order_number"]);
        bench.unfoldAll();
        QTest::qWait(200);
        QStringList low;
        int seen = 0;
        for (QWidget *widget : bench.window().current()->findChildren<QWidget *>()) {
            if (!isHit(*widget))
                continue;
            ++seen;
            if (const double mm = lowestMm(*widget); mm < leastMm - roundedMm)
                low << QString("%1 %2: %3 mm")
                           .arg(widget->metaObject()->className(), widget->objectName())
                           .arg(mm, 0, 'f', 1);
        }
        QVERIFY(seen > 40);
        low.removeDuplicates();
        QVERIFY2(low.isEmpty(), qPrintable("\n" + low.join('\n')));
    }
};

QTEST_MAIN(TargetsTest)
#include "TargetsTest.moc"
