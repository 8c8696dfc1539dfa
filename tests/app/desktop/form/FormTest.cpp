#include "app/desktop/form/Form.h"

#include "app/desktop/Theme.h"
#include "tests/support/Heard.h"

#include <QComboBox>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

using namespace loopwright;

namespace {

std::vector<FieldSpec> someFields()
{
    return {{"volts.ring", "Ring", "V; at most 50"},
            {"result", "Result", {}, Answer::Choice, {{u'U', "up", "Up"}, {u'D', "down", "Down"}}},
            {"cause",
             "Cause",
             "1 to 127",
             Answer::Whole,
             {},
             1,
             [](const QJsonObject &typed) { return typed.value("result").toString() == u"down"; }},
            {"at", "At", {}, Answer::Clock},
            {"note", "Note", {}, Answer::Text}};
}

} // namespace

class FormTest : public QObject
{
    Q_OBJECT

    QList<QJsonObject> m_kept;
    int m_confirmed = 0;
    std::unique_ptr<Form> m_form;

    Findings check(const QJsonObject &values) const
    {
        Findings findings;
        if (!values.value("volts").toObject().value("ring").isDouble())
            findings.push_back(
                {Severity::Error, "form", "a number is needed", {}, "volts.ring", 0});
        if (values.contains("at") && !Moment::parse(values.value("at").toString()))
            findings.push_back({Severity::Error, "form", "is no time", {}, "at", 0});
        if (!values.contains("note"))
            findings.push_back({Severity::Error, "form", "is required and missing", {}, "note", 0});
        return findings;
    }
    void key(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key(key), modifiers);
    }
    static QString focus() { return QApplication::focusWidget()->objectName(); }
    QString reason(const QString &field) const
    {
        const Findings &all = m_form->field(field)->findings();
        return all.empty() ? QString() : all.front().reason.english();
    }

private slots:
    void init()
    {
        m_kept.clear();
        m_confirmed = 0;
        FormUse use;
        use.now = [] { return *Moment::parse(u"2026-03-04T15:15:00-06:00"); };
        use.keep = [this](const QJsonObject &typed) { m_kept << typed; };
        use.check = [this](const QJsonObject &values) { return check(values); };
        use.confirm = [this] { return ++m_confirmed > 0; };
        m_form = std::make_unique<Form>("part", "Record",
                                        std::vector<FieldGroup>{{{}, someFields()}}, use);
        m_form->resize(900, 500);
        m_form->show();
        m_form->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_form.get()));
        m_form->firstEmpty()->setFocus();
    }
    void cleanup() { m_form.reset(); }

    void enterGoesOnAndConfirmsAtTheLast()
    {
        QSignalSpy confirmed(m_form.get(), &Form::confirmed);
        QCOMPARE(focus(), "part.volts.ring");
        QTest::keyClicks(QApplication::focusWidget(), "0,2");
        key(Qt::Key_Return);
        QCOMPARE(focus(), "part.result");
        QTest::keyClicks(QApplication::focusWidget(), "u");
        QCOMPARE(focus(), "part.at"); // no cause is asked
        QTest::keyClicks(QApplication::focusWidget(), "0814");
        key(Qt::Key_Enter, Qt::KeypadModifier);
        QCOMPARE(focus(), "part.note");
        QTest::keyClicks(QApplication::focusWidget(), "dry");
        QCOMPARE(m_confirmed, 0);
        key(Qt::Key_Return);
        QCOMPARE(m_confirmed, 1);
        QCOMPARE(confirmed.count(), 1);
        QCOMPARE(m_form->values(), (QJsonObject{{"volts", QJsonObject{{"ring", 0.2}}},
                                                {"result", "up"},
                                                {"at", "2026-03-04T08:14:00-06:00"},
                                                {"note", "dry"}}));
    }

    void ctrlEnterConfirmsFromAnywhere()
    {
        key(Qt::Key_Return, Qt::ControlModifier);
        QCOMPARE(m_confirmed, 1);
    }

    void askedIsWhatTheAnswersAskFor()
    {
        m_form->setTyped({{"result", "down"}, {"cause", "16"}});
        QVERIFY(m_form->field("cause")->isAsked());
        QCOMPARE(m_form->values().value("cause").toInt(), 16);
        m_form->goTo("result");
        QTest::keyClicks(QApplication::focusWidget(), "u");
        QVERIFY(!m_form->field("cause")->isAsked());
        QVERIFY(!m_form->values().contains("cause"));
        QVERIFY(m_form->typed().contains("cause")); // kept, should it be asked again
    }

    void aDraftIsKeptOneSecondAfterTheLastKey()
    {
        QElapsedTimer since;
        for (const char *each : {"1", "2", "."}) {
            QTest::keyClicks(QApplication::focusWidget(), each);
            since.start();
            QTest::qWait(400);
        }
        QVERIFY2(m_kept.isEmpty(), "kept between the keys");
        QTRY_COMPARE(m_kept.size(), 1);
        QVERIFY2(since.elapsed() >= 900 && since.elapsed() < 1600,
                 qPrintable(QString::number(since.elapsed())));
        QCOMPARE(m_kept.front(), (QJsonObject{{"volts.ring", "12."}}));
    }

    void aDraftIsKeptAtOnceWhereTheFieldIsLeftOrHidden()
    {
        QTest::keyClicks(QApplication::focusWidget(), "12");
        key(Qt::Key_Tab);
        QCOMPARE(m_kept.size(), 1);
        key(Qt::Key_Tab);
        QCOMPARE(m_kept.size(), 1); // nothing was typed since
        m_form->goTo("note");
        QTest::keyClicks(QApplication::focusWidget(), "x");
        m_form->hide();
        QCOMPARE(m_kept.size(), 2);
        QCOMPARE(m_kept.last().value("note").toString(), "x");
    }

    void whatReplacesTheTextKeepsNoDraft()
    {
        QTest::keyClicks(QApplication::focusWidget(), "12");
        m_form->clear();
        QTest::qWait(Form::keepAfterMs + 200);
        QVERIFY(m_kept.isEmpty());
        m_form->goTo("note");
        QVERIFY(m_form->typed().isEmpty());
    }

    void aWrongEntryIsMarkedWhileItIsTyped()
    {
        QTest::keyClicks(QApplication::focusWidget(), "x");
        QTRY_COMPARE(reason("volts.ring"), "a number is needed");
        QCOMPARE(focus(), "part.volts.ring");
        QCOMPARE(reason("note"), QString()); // not filled in yet is not wrong yet
        key(Qt::Key_Backspace);
        QCOMPARE(reason("volts.ring"), QString());
    }

    void aTimeIsNotWrongBeforeItIsWhole()
    {
        m_form->goTo("at");
        QTest::keyClicks(QApplication::focusWidget(), "081");
        QTest::qWait(Form::checkAfterMs + 150);
        QCOMPARE(reason("at"), QString());
        key(Qt::Key_Return);
        QCOMPARE(reason("at"), "is no time");
    }

    void theFirstErrorTakesTheKeyboardAndStays()
    {
        QTest::keyClicks(QApplication::focusWidget(), "3");
        QVERIFY(!m_form->check());
        QCOMPARE(focus(), "part.note");
        QCOMPARE(reason("note"), "is required and missing");
        QTest::qWait(Form::checkAfterMs + 150);
        QCOMPARE(reason("note"), "is required and missing");
    }

    void whatBelongsToNoFieldStandsBelow()
    {
        m_form->tell({Severity::Error, "x", "the disk is full", {}, {}, 0});
        const auto lines = m_form->findChildren<SignLine *>();
        QVERIFY(std::ranges::any_of(lines, [](const SignLine *line) {
            return line->isVisible() && line->sign() == Status::Failed &&
                   line->text() == u"the disk is full";
        }));
    }

    /// Below the form, or at the field that the keyboard was at already; a field that it comes to
    /// says the reason itself. Once for each time that somebody tries.
    void aRefusalIsSaid()
    {
        Heard heard;
        m_form->setConfirm([this] {
            m_form->tell(Status::Failed, "the disk is full");
            return false;
        });
        for (int tried = 0; tried < 2; ++tried) {
            key(Qt::Key_Return, Qt::ControlModifier);
            QCOMPARE(heard.take(), QStringList("the disk is full"));
        }
        m_form->tell(Status::Failed, "the disk is full"); // nobody tried
        QTest::keyClicks(QApplication::focusWidget(), "3");
        m_form->tell(Status::Failed, "the disk is full");
        QCOMPARE(heard.take(), QStringList());
        m_form->setConfirm([this] { return m_form->check(); });
        key(Qt::Key_Return, Qt::ControlModifier);
        QCOMPARE(focus(), "part.note");
        QCOMPARE(heard.take(), QStringList());
        key(Qt::Key_Return, Qt::ControlModifier);
        QCOMPARE(heard.take(), QStringList("is required and missing"));
    }

    void aProposalLeavesWhatIsTyped()
    {
        QTest::keyClicks(QApplication::focusWidget(), "7");
        m_form->propose({{"volts.ring", "9"}, {"note", "proposed"}});
        QCOMPARE(m_form->typed(), (QJsonObject{{"volts.ring", "7"}, {"note", "proposed"}}));
        QTRY_COMPARE(m_kept.size(), 1); // and its draft is kept
    }

    void aListIsAsHighAsWhatIsTypedBesideIt()
    {
        const std::vector<KeyedOption> codes{{u'A', "a", "Ay"}, {u'B', "b", "Bee"}};
        const FieldSpec text{"text", "Text", {}, Answer::Text},
            list{"list", "List", {}, Answer::List, codes},
            open{"open", "Open", {}, Answer::OpenList, codes};
        Form form("other", "Record", {{{}, {text, list, open}}}, {});
        form.resize(900, 300);
        form.show();
        for (const char *key : {"list", "open"})
            QCOMPARE(form.field(key)->field()->height(), form.field("text")->field()->height());
    }
    void everyKindOfAnswerIsReadAndWritten()
    {
        const std::vector<KeyedOption> codes = {{u'A', "a", "First"}, {u'B', "b", "Second"}};
        FieldSpec list{"list", "List", {}, Answer::List, codes};
        list.usual = "a";
        Form form("all", {},
                  {{"Group",
                    {list,
                     {"open", "Open", {}, Answer::OpenList, codes},
                     {"lines", "Lines", {}, Answer::Lines},
                     {"id", "Identifier", {}, Answer::Identifier},
                     {"day", "Day", {}, Answer::Date},
                     {"yes", "Yes", {}, Answer::YesNo},
                     {"services",
                      "Services",
                      {},
                      Answer::Services,
                      {{{}, "voice", "voice"}, {{}, "data", "data"}}}}}},
                  {}, FormShape::Cards);
        QCOMPARE(form.typed(), (QJsonObject{{"list", "a"}}));
        const QJsonObject all{{"list", "b"},
                              {"open", "else"},
                              {"lines", "one\ntwo"},
                              {"id", "2175550101"},
                              {"day", "2026-03-12"},
                              {"yes", "true"},
                              {"services", "voice+data"}};
        form.setTyped(all);
        QCOMPARE(form.typed(), all);
        form.field("open")->setOptions({{{}, "else", "Something else"}});
        QCOMPARE(form.findChild<QComboBox *>("all.open")->currentText(), "Something else");
        QCOMPARE(form.typed(), all);
        form.setTyped({{"list", "unknown"}});
        QCOMPARE(form.typed(), (QJsonObject{{"list", "unknown"}})); // for the check to name
    }
};

QTEST_MAIN(FormTest)
#include "FormTest.moc"
