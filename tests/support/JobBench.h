#pragma once
// The real window on a database file, driven by keys alone, with a clock that the test sets.

#include "app/actions/Acceptance.h"
#include "app/actions/Drafts.h"
#include "app/actions/Evidence.h"
#include "app/desktop/MainWindow.h"
#include "app/desktop/job/StationPanel.h"
#include "tests/support/Office.h"

#include <QApplication>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>

namespace loopwright::jobs {

class JobBench
{
public:
    /// Records with the office of Office.h and these orders, and the window on them.
    explicit JobBench(const QList<OrderFields> &orders)
        : m_path(m_folder.filePath("records.sqlite"))
    {
        auto records = office(m_path);
        const auto report = importOrders(*records, csv(orders), {"orders.csv"});
        if (!report || !report->clean())
            qFatal("the orders were not taken in");
        records.reset();
        open();
    }
    /// The window on records that are there already.
    JobBench(const QString &path, double minute)
        : m_path(path)
    {
        at(minute);
        open();
    }

    QString path() const { return m_path; }

    /// Starts the program on the file.
    void open()
    {
        auto workplace = DesktopContext::open(path(), "K7", m_now);
        if (!workplace)
            qFatal("%s", qPrintable(workplace.error().text()));
        m_workplace = std::move(*workplace);
        m_window = std::make_unique<MainWindow>(*m_workplace);
        m_window->resize(1180, 800);
        m_window->show();
        m_window->activateWindow();
        if (!QTest::qWaitForWindowActive(m_window.get()))
            qFatal("the window does not become active");
    }
    void close()
    {
        m_window.reset();
        m_workplace.reset();
    }

    MainWindow &window() { return *m_window; }
    Records &records() { return m_workplace->records(); }
    /// From now on; Kim Carver, the installer, is at the window first.
    void actAs(const QString &key) { m_workplace->actAs(key); }

    /// `minute` counts from 08:00 on the day of the visit.
    void at(double minute)
    {
        m_now = Moment::parse(u"2026-03-04T08:00:00-06:00")->plusSeconds(minute * 60);
        if (m_workplace)
            m_workplace->records().setNow(m_now);
    }

    static QString focus()
    {
        const QWidget *widget = QApplication::focusWidget();
        return widget ? widget->objectName() : QString();
    }
    static void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        if (!QApplication::focusWidget())
            qFatal("nothing has the keyboard");
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
    }
    static void keys(const QString &text)
    {
        for (const QChar each : text)
            QTest::keyClick(QApplication::focusWidget(), each.toLatin1());
    }
    /// Types and presses Enter.
    static void enter(const QString &text = {})
    {
        keys(text);
        key(Qt::Key_Return);
    }

    /// Opens the job, and sets installer and instrument for all entries.
    void openJob(const QString &number)
    {
        m_window->openOrder(number);
        go("context.installer");
        key(Qt::Key_A, Qt::ControlModifier);
        enter("K7");
        if (find<QWidget>("instrument.instrument")) {
            go("instrument.instrument");
            key(Qt::Key_A, Qt::ControlModifier);
            enter("TS-4");
        }
        m_window->findChild<QWidget *>("next")->setFocus();
    }
    /// The keyboard at the field of that name, as a click puts it there.
    void go(const QString &name)
    {
        auto *widget = m_window->findChild<QWidget *>(name);
        if (!widget)
            qFatal("there is no %s", qPrintable(name));
        for (QWidget *up = widget; up; up = up->parentWidget())
            if (auto *panel = qobject_cast<StationPanel *>(up))
                panel->unfold();
        widget->setFocus();
    }
    /// Every part of the job page, as clicks on their titles do it.
    void unfoldAll()
    {
        for (StationPanel *panel : m_window->findChildren<StationPanel *>())
            panel->unfold();
    }
    template<class W>
    W *find(const QString &name)
    {
        return m_window->findChild<W *>(name);
    }

    QJsonObject decision(const QString &order)
    {
        const auto decision = decisionNow(records(), order);
        if (!decision)
            qFatal("%s", qPrintable(decision.error().text()));
        return judged(*decision);
    }

    /// What must be equal however the job was recorded: overall and by criterion.
    static QJsonObject judged(const Decision &decision)
    {
        QJsonObject criteria;
        for (const CriterionResult &each : decision.criteria)
            criteria.insert(each.key, QJsonObject{{"outcome", toText(each.outcome)},
                                                  {"measured", each.measured},
                                                  {"measured_text", each.measuredText.english()},
                                                  {"limit", each.limit},
                                                  {"limit_text", each.limitText.english()}});
        return {{"outcome", toText(decision.outcome)}, {"criteria", criteria}};
    }

private:
    QTemporaryDir m_folder;
    QString m_path;
    Moment m_now = *Moment::parse(u"2026-03-04T08:00:00-06:00");
    std::unique_ptr<DesktopContext> m_workplace;
    std::unique_ptr<MainWindow> m_window;
};

/// The same job recorded from a file.
inline QJsonObject decisionFromFile(const OrderFields &fields, const QList<QJsonObject> &facts)
{
    auto records = office();
    records->setNow(Moment::parse(u"2026-03-04T12:00:00-06:00"));
    const auto taken = importOrders(*records, csv({fields}), {"orders.csv"});
    const auto recorded =
        recordFile(*records, canonicalJson(record(order(fields), facts)), "job.json");
    if (!taken || !recorded)
        qFatal("the job was not recorded");
    return JobBench::judged(*decisionNow(*records, fields["order_number"]));
}

} // namespace loopwright::jobs
