// From the order file to the certificate, through the actions alone. Longer than 400 lines: one
// chain, whose steps share its records.

#include "app/actions/Acceptance.h"
#include "app/actions/Board.h"
#include "app/actions/Certificates.h"
#include "app/actions/Drafts.h"
#include "app/actions/Evidence.h"
#include "app/actions/History.h"
#include "app/actions/Orders.h"
#include "app/actions/Register.h"
#include "app/actions/VerifyCertificate.h"
#include "db/Connection.h"
#include "tests/support/Office.h"

#include <QGuiApplication>
#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

OrderFields with(OrderFields fields, const QList<std::pair<QString, QString>> &changes)
{
    for (const auto &[column, value] : changes)
        fields[column] = value;
    return fields;
}

} // namespace

class ChainTest : public QObject
{
    Q_OBJECT

    static ImportReport imported(Records &records, const QList<OrderFields> &orders,
                                 bool update = false)
    {
        ImportOptions options{"orders.csv"};
        options.update = update;
        const auto report = importOrders(records, csv(orders), options);
        if (!report)
            qFatal("%s", qPrintable(report.error().text()));
        return *report;
    }
    static std::unique_ptr<Records> acceptedJob()
    {
        auto records = office();
        imported(*records, {briFields()});
        const auto report = recordFile(*records, recordBytes(briFields(), briFacts()), "job.json");
        if (!report)
            qFatal("%s", qPrintable(report.error().text()));
        return records;
    }
    static QStringList codes(const ImportReport &report)
    {
        QStringList list;
        for (const Finding &finding : report.findings)
            list << finding.code;
        return list;
    }

private slots:
    void runsFromOrderToCertificate()
    {
        auto records = acceptedJob();
        const auto decision = decideOrder(*records, "A-1001");
        QVERIFY2(decision, decision ? "" : qPrintable(decision.error().text()));
        QCOMPARE(toText(decision->outcome), "accepted");
        QByteArray file;
        IssueRequest request{"A-1001", Paper::A4, {}, [&file](const CertificatePaper &made) {
                                 file = made.pdf;
                                 return Result<void>();
                             }};
        const auto issued = issueCertificate(*records, request);
        QVERIFY2(issued, issued ? "" : qPrintable(issued.error().text()));
        QVERIFY(!issued->copy);
        QVERIFY(file.startsWith("%PDF"));
        QCOMPARE(toText(verifyCertificateFile(*records, file)->verdict), "genuine");
        QCOMPARE(toText(verifyCertificateNumber(*records, issued->number, issued->code)->verdict),
                 "genuine");
        QCOMPARE(toText(verifyCertificateNumber(*records, issued->number, "000000000000")->verdict),
                 "altered");

        const QByteArray original = file;
        const auto preview = previewCertificate(*records, request.order, {});
        QVERIFY(preview);
        QCOMPARE(preview->number, issued->number);
        const auto copy = issueCertificate(*records, request);
        QVERIFY(copy && copy->copy);
        QCOMPARE(copy->number, issued->number);
        QCOMPARE(copy->digest, issued->digest);
        QCOMPARE(toText(verifyCertificateFile(*records, file)->verdict), "genuine");
        QCOMPARE(toText(verifyCertificateFile(*records, original)->verdict), "genuine");

        QCOMPARE(showOrder(*records, "A-1001")->stage, Stage::Done);
        QVERIFY(completeOrder(*records, "A-1001"));
        QCOMPARE(verifyHistory(*records)->broken.size(), 0U);
    }
    void signingLaterMakesAFurtherIssueOfTheSame()
    {
        auto records = acceptedJob();
        QByteArray file;
        IssueRequest request{"A-1001", Paper::A4, {}, [&file](const CertificatePaper &made) {
                                 file = made.pdf;
                                 return Result<void>();
                             }};
        const auto first = issueCertificate(*records, request);
        const QByteArray unsignedFile = file;
        const auto sign = [](const QString &role, const QString &name) {
            return Signature{role,
                             name,
                             *Moment::parse(u"2026-03-04T12:30:00-06:00"),
                             {{{100, 200}, {900, 700}}}};
        };
        request.signatures = {sign("installer", "Kim Carver")};
        const auto second = issueCertificate(*records, request);
        QVERIFY2(second, second ? "" : qPrintable(second.error().text()));
        QVERIFY(!second->copy && second->mark.countersigns);
        QCOMPARE(second->mark.copy, 1); // issue 2
        QCOMPARE(second->number, first->number);
        QCOMPARE(second->digest, first->digest);
        QVERIFY(file != unsignedFile);
        for (const QByteArray &each : {unsignedFile, file})
            QCOMPARE(toText(verifyCertificateFile(*records, each)->verdict), "genuine");
        // Who signed before does not sign again; the other one's makes a further issue.
        request.signatures = {sign("installer", "Somebody Else"), sign("customer", "Pat Doe")};
        const auto third = issueCertificate(*records, request);
        QVERIFY(third && third->mark.countersigns);
        QCOMPARE(third->mark.later.size(), 2U);
        QCOMPARE(signatureOf(third->mark.later, "installer")->name, "Kim Carver");
        // From now on it is a copy, which bears both.
        const auto fourth = issueCertificate(*records, request);
        QVERIFY(fourth && fourth->copy && !fourth->mark.countersigns);
        QCOMPARE(fourth->mark.later, third->mark.later);
        const auto view = showOrder(*records, "A-1001");
        QCOMPARE(view->certificates.size(), 1U);
        QCOMPARE(view->certificates.front().copies, 3);
        QCOMPARE(view->certificates.front().signatures, third->mark.later);
        QCOMPARE(view->events.back().kind, "certificate_copied");
        QCOMPARE(std::ranges::count(view->events, QString("certificate_signed"), &Event::kind), 2);
        QCOMPARE(verifyHistory(*records)->broken.size(), 0U);
    }
    void aSignatureOfTheFirstIssueStays()
    {
        auto records = acceptedJob();
        IssueRequest request{"A-1001", Paper::A4, {}, {}};
        request.signatures = {{"customer", "Pat Doe", records->now(), {{{1, 2}, {3, 4}}}}};
        const auto first = issueCertificate(*records, request);
        QVERIFY(first && !first->mark.countersigns);
        QVERIFY(first->mark.later.empty()); // it is of the content
        const auto copy = issueCertificate(*records, request);
        QVERIFY(copy && copy->copy);
    }
    void oneChangedByteIsAltered()
    {
        auto records = acceptedJob();
        QByteArray file;
        QVERIFY(issueCertificate(
            *records, {"A-1001", Paper::Letter, {}, [&file](const CertificatePaper &made) {
                           file = made.pdf;
                           return Result<void>();
                       }}));
        for (qsizetype at = 0; at < file.size(); at += 97) {
            QByteArray changed = file;
            changed[at] = char(changed[at] ^ 1);
            QCOMPARE(toText(verifyCertificateFile(*records, changed)->verdict), "altered");
        }
        QCOMPARE(toText(verifyCertificateFile(*records, "%PDF-1.6 something else")->verdict),
                 "unknown");
        QCOMPARE(toText(verifyCertificateFile(*records, {})->verdict), "unknown");
    }
    void voidedEvidenceSupersedesLaterTroubleDoesNot()
    {
        auto records = acceptedJob();
        QByteArray file;
        const IssueRequest request{"A-1001", Paper::A4, {}, [&file](const CertificatePaper &made) {
                                       file = made.pdf;
                                       return Result<void>();
                                   }};
        QVERIFY(issueCertificate(*records, request));
        QJsonObject trouble =
            fact(60, "layer", 0, {{"layer", 1}, {"interface", "u"}, {"outcome", "down"}});
        trouble["at"] = "2026-03-05T11:00:00-06:00";
        QVERIFY(recordFile(*records, recordBytes(briFields(), {trouble}), "later.json"));
        const auto check = verifyCertificateFile(*records, file);
        QCOMPARE(toText(check->verdict), "genuine");
        QCOMPARE(check->later.size(), 1U);
        QVERIFY(voidFact(*records, uuid(4), "wrong pair was measured"));
        const auto after = verifyCertificateFile(*records, file);
        QCOMPARE(toText(after->verdict), "genuine"); // the paper is true, what it says is not
        QCOMPARE(after->stands, false);
        QVERIFY2(after->because.contains("wrong pair was measured"), qPrintable(after->because));
    }
    void retestMakesANewerCertificate()
    {
        auto records = acceptedJob();
        QByteArray file;
        const IssueRequest request{"A-1001", Paper::A4, {}, [&file](const CertificatePaper &made) {
                                       file = made.pdf;
                                       return Result<void>();
                                   }};
        const auto first = issueCertificate(*records, request);
        const QByteArray original = file;
        QVERIFY(recordFile(*records, recordBytes(briFields(), {detector(50, 60), run(51, 62)}),
                           "retest.json"));
        const auto second = issueCertificate(*records, request);
        QVERIFY(second && !second->copy);
        QVERIFY(second->number != first->number);
        QCOMPARE(toText(verifyCertificateFile(*records, original)->verdict), "superseded");
        QCOMPARE(toText(verifyCertificateFile(*records, file)->verdict), "genuine");
    }
    void aPaperThatCouldNotBeWrittenIsMadeAgain()
    {
        auto records = acceptedJob();
        QByteArray lost, file;
        IssueRequest request{
            "A-1001", Paper::A4, {}, [&lost](const CertificatePaper &made) -> Result<void> {
                lost = made.pdf;
                return failure(ErrorCode::BadInput, "the disk is full");
            }};
        const auto none = issueCertificate(*records, request);
        QVERIFY(!none);
        QCOMPARE(none.error().code, ErrorCode::DiskTrouble); // whatever the paper failed of
        const auto view = showOrder(*records, "A-1001");
        QCOMPARE(view->certificates.size(), 1u);
        QVERIFY(none.error().message.contains(view->certificates.front().number));
        records->setNow(*Moment::parse(u"2026-03-05T09:00:00-06:00"));
        request.deliver = [&file](const CertificatePaper &made) {
            file = made.pdf;
            return Result<void>();
        };
        const auto again = issueCertificate(*records, request);
        QVERIFY2(again, again ? "" : qPrintable(again.error().text()));
        QVERIFY(!again->copy);
        QCOMPARE(again->mark.copy, 0);
        QVERIFY(file == lost);
        QCOMPARE(showOrder(*records, "A-1001")->events.size(), view->events.size());
        QCOMPARE(toText(verifyCertificateFile(*records, file)->verdict), "genuine");
        // Once it is there, the next one is a copy.
        const auto copy = issueCertificate(*records, request);
        QVERIFY(copy && copy->copy);
        QVERIFY(file != lost);
    }
    void anotherPaperThanTheOneThatIsMissingIsACopy()
    {
        auto records = acceptedJob();
        IssueRequest request{"A-1001", Paper::A4, {}, [](const CertificatePaper &) -> Result<void> {
                                 return failure(ErrorCode::DiskTrouble, "the disk is full");
                             }};
        QVERIFY(!issueCertificate(*records, request));
        request.deliver = {};
        request.paper = Paper::Letter;
        const auto copy = issueCertificate(*records, request);
        QVERIFY(copy && copy->copy);
        QCOMPARE(copy->mark.copy, 1);
    }
    void aWrongPlaceCostsNothing()
    {
        auto records = acceptedJob();
        IssueRequest request{"A-1001", Paper::A4, {}, {}};
        request.mayDeliver = []() -> Result<void> {
            return failure(ErrorCode::Usage, "is a device");
        };
        const auto none = issueCertificate(*records, request);
        QVERIFY(!none);
        QCOMPARE(none.error().code, ErrorCode::Usage);
        QVERIFY(showOrder(*records, "A-1001")->certificates.empty());
    }
    void nothingIsIssuedWithoutAcceptance()
    {
        auto records = office();
        imported(*records, {briFields()});
        const auto issued = issueCertificate(*records, {"A-1001", Paper::A4, {}, {}});
        QVERIFY(!issued);
        QCOMPARE(issued.error().code, ErrorCode::Refused);
        QCOMPARE(completeOrder(*records, "A-1001").error().code, ErrorCode::Refused);
        QCOMPARE(decideOrder(*records, "A-9999").error().code, ErrorCode::NotFound);
    }
    void refusesARecordWhole()
    {
        auto records = office();
        imported(*records, {briFields()});
        QList<QJsonObject> facts = briFacts();
        facts << fact(40, "layer", 0, {{"layer", 3}, {"terminal", 7}, {"outcome", "up"}});
        const auto report = recordFile(*records, recordBytes(briFields(), facts), "job.json");
        QVERIFY(!report);
        QCOMPARE(report.error().code, ErrorCode::BadInput);
        QCOMPARE(showOrder(*records, "A-1001")->facts.size(), 0U);
        facts.last() = fact(40, "note", 0, {{"text", "from the future"}});
        facts.last()["at"] = "2026-03-07T12:00:00-06:00";
        QVERIFY(recordFile(*records, recordBytes(briFields(), facts), "job.json")
                    .error()
                    .place.endsWith(".at"));
        QCOMPARE(recordFile(*records, "{\"order\":\"nobody\",\"facts\":[]}", "j").error().code,
                 ErrorCode::NotFound);
    }
    void unregisteredIsTakenInAndTold()
    {
        auto records = office();
        imported(*records, {briFields()});
        QJsonObject record = jobs::record(jobs::order(briFields()), briFacts());
        record["instrument"] = "TS-9";
        record["installer"] = "X";
        const auto report = recordFile(*records, canonicalJson(record), "job.json");
        QVERIFY(report);
        QStringList codes;
        for (const RecordFinding &told : report->told)
            codes << told.code;
        // The last of the card that says disconnected, and of the layers that came up all the same.
        QCOMPARE(codes, (QStringList{"installer_not_registered", "instrument_not_registered",
                                     "office_connected"}));
        QCOMPARE(toText(decideOrder(*records, "A-1001")->outcome), "not_accepted");
        // Registering it afterwards is enough.
        QVERIFY(importInstruments(
            *records,
            "instrument,serial,kind,calibrated_on,calibration_due\nTS-9,S,k,,not_required\n",
            {"instruments.csv"}));
        QCOMPARE(boardRows(*records, {})->front().outcome, OrderOutcome::Accepted);
    }
    void importCountsAndHolds()
    {
        auto records = office();
        const OrderFields second =
            with(briFields(), {{"order_number", "A-1002"}, {"circuit_number", "C-78"}});
        const OrderFields bad =
            with(briFields(), {{"order_number", "A-1003"}, {"due_date", "soon"}});
        const ImportReport report = imported(*records, {briFields(), second, bad, briFields()});
        QCOMPARE(report.accepted, 2);
        QCOMPARE(report.held, 1);
        QCOMPARE(report.refused, 1);
        QCOMPARE(report.unchanged, 1);
        QVERIFY(codes(report).contains("dn_in_use"));
        QVERIFY(codes(report).contains("spid_in_use"));
        QVERIFY(codes(report).contains("pair_in_use"));
        QVERIFY(report.rejects.contains("A-1003"));
        QVERIFY(report.rejects.contains("soon"));
        const auto rows = boardRows(*records, {});
        QCOMPARE(rows->size(), 2U);
        QCOMPARE((*rows)[1].stage, stageAt(Station::Identifiers));
        QCOMPARE((*rows)[1].held, true);
        QCOMPARE((*rows)[0].held, false);
        QVERIFY(!auditIdentifiers(*records)->empty());
    }
    void cancelGivesBackAndTheHeldOrderGetsIt()
    {
        auto records = office();
        imported(*records, {briFields(), with(briFields(), {{"order_number", "A-1002"},
                                                            {"circuit_number", "C-78"}})});
        QCOMPARE(cancelOrder(*records, "A-1001", " ").error().code, ErrorCode::Usage);
        QVERIFY(cancelOrder(*records, "A-1001", "customer went elsewhere"));
        const auto view = showOrder(*records, "A-1002");
        QVERIFY(!view->held);
        QCOMPARE(toText(view->decision.criterion("identifiers")->outcome), "met");
        QCOMPARE(verifyHistory(*records)->broken.size(), 0U);
    }
    void aChangeHoldsOldAndNewAndReleasesTheOld()
    {
        auto records = acceptedJob();
        QVERIFY(completeOrder(*records, "A-1001"));
        const OrderFields change = with(briFields(), {{"order_number", "A-1002"},
                                                      {"order_type", "change"},
                                                      {"dn_1", "217-555-0160"},
                                                      {"spid_1", "21755501600101"}});
        QCOMPARE(imported(*records, {change}).held, 0);
        QCOMPARE(toText(showOrder(*records, "A-1002")->input.scope), "numbers_only");
        // The old number is still the circuit's while the change is open.
        const OrderFields thief = with(briFields(), {{"order_number", "A-1003"},
                                                     {"circuit_number", "C-99"},
                                                     {"pair", "9"},
                                                     {"dn_2", "217-555-0170"},
                                                     {"spid_2", "21755501700101"}});
        QCOMPARE(imported(*records, {thief}).held, 1);
        QVERIFY(recordFile(
            *records,
            recordBytes(change,
                        {safety(70, 0),
                         fact(71, "layer", 1, {{"layer", 3}, {"terminal", 1}, {"outcome", "up"}}),
                         fact(72, "layer", 2, {{"layer", 3}, {"terminal", 2}, {"outcome", "up"}}),
                         call(73, 3, "B1", "out", "voice", "2175550160"),
                         call(74, 4, "B1", "in", "voice", "2175550160"),
                         call(75, 5, "B1", "in", "data", "2175550160"),
                         call(76, 6, "B1", "out", "data", "2175550160"),
                         call(77, 7, "B2", "out", "data", "2175550144"),
                         call(78, 8, "B2", "in", "data", "2175550144")}),
            "change.json"));
        const auto decision = decideOrder(*records, "A-1002");
        const CriterionResult *open = decision->firstOpen();
        QVERIFY2(!open, open ? qPrintable(open->key + ": " + open->reason.english()) : "");
        QVERIFY(completeOrder(*records, "A-1002"));
        QVERIFY(!showOrder(*records, "A-1003")->held); // it got the released number
        QCOMPARE(toText(showOrder(*records, "A-1001")->decision.outcome), "accepted");
    }
    void updatingIdentifiersRetiresEvidence()
    {
        auto records = acceptedJob();
        const OrderFields changed = with(briFields(), {{"spid_1", "21755501430102"}});
        QCOMPARE(imported(*records, {changed}).refused, 1);
        QCOMPARE(imported(*records, {changed}, true).accepted, 1);
        const auto view = showOrder(*records, "A-1001");
        QCOMPARE(toText(view->decision.criterion("layer1")->outcome), "met");
        QCOMPARE(toText(view->decision.criterion("layer3")->outcome), "missing");
        QCOMPARE(boardRows(*records, {})->front().stage, stageAt(Station::TurnUp));
    }
    void exceptionNeedsNameReasonAndRole()
    {
        auto records = office();
        imported(*records, {briFields()});
        QList<QJsonObject> facts = briFacts();
        facts.removeAt(4);
        QVERIFY(recordFile(*records, recordBytes(briFields(), facts), "job.json"));
        QCOMPARE(acceptWithException(*records, "A-1001", {"layer1"}, "").error().code,
                 ErrorCode::Usage);
        QCOMPARE(acceptWithException(*records, "A-1001", {"nonsense"}, "x").error().code,
                 ErrorCode::Usage);
        QCOMPARE(acceptWithException(*records, "A-1001", {"safety"}, "x").error().code,
                 ErrorCode::Refused);
        QCOMPARE(acceptWithException(*records, "A-1001", {"layer2"}, "x").error().code,
                 ErrorCode::Refused);
        records->actAs("K7");
        QCOMPARE(acceptWithException(*records, "A-1001", {"layer1"}, "x").error().code,
                 ErrorCode::Refused);
        records->actAs("S1");
        const auto decision =
            acceptWithException(*records, "A-1001", {"layer1"}, "the NT follows next week");
        QVERIFY2(decision, decision ? "" : qPrintable(decision.error().text()));
        QCOMPARE(toText(decision->outcome), "accepted_with_exception");
        QVERIFY(issueCertificate(*records, {"A-1001", Paper::A4, {}, {}}));
        // What is entered later ends the exception, though the work was done before it.
        QJsonObject down = fact(81, "layer", 50, {{"layer", 1}, {"interface", "st"}});
        down["outcome"] = "down";
        QVERIFY(recordFile(*records, recordBytes(briFields(), {down}), "job.json"));
        QCOMPARE(toText(decideOrder(*records, "A-1001")->outcome), "not_accepted");
    }
    void anOldDecisionRepeatsByteForByte()
    {
        auto records = acceptedJob();
        const auto first = decideOrder(*records, "A-1001");
        QVERIFY(voidFact(*records, uuid(4), "wrong pair"));
        const auto now = decideOrder(*records, "A-1001");
        QVERIFY(now->id != first->id);
        const auto again = decideAgain(*records, first->id);
        QVERIFY2(again, again ? "" : qPrintable(again.error().text()));
        QCOMPARE(canonicalJson(again->toJson()), canonicalJson(first->toJson()));
        QCOMPARE(decideAgain(*records, "no-such").error().code, ErrorCode::NotFound);
    }
    void anOldDecisionThatWasTamperedWithIsTold()
    {
        auto records = acceptedJob();
        const auto decided = decideOrder(*records, "A-1001");
        QVERIFY(decided);
        const bool isFile = records->database().isFile();
        QVERIFY(
            editPast(records->database(),
                     QByteArray("DROP TRIGGER decision_no_update") +
                         (isFile ? "" : " ON decision") + "; UPDATE decision SET result = " +
                         "replace(CAST(result AS TEXT), 'Layer 1 at U is in sync.', 'In sync.')" +
                         (isFile ? "" : "::json")));
        QCOMPARE(decideAgain(*records, decided->id).error().code, ErrorCode::Refused);
    }
    // What is taken in is quoted by facts and decisions, which must be read back.
    void whatCouldNotBeReadBackIsNotTakenIn()
    {
        auto records = acceptedJob();
        const QByteArray head = "instrument,serial,kind,calibrated_on,calibration_due\n";
        for (const QByteArray &serial : {QByteArray(201, 'S'), QByteArray("S\x07")}) {
            const auto report = importInstruments(
                *records, head + "TS-9," + serial + ",BER,2026-01-01,2027-01-01\n",
                {"instruments.csv"});
            QVERIFY(report);
            QCOMPARE(report->findings.front().code, "text_malformed");
            QCOMPARE(report->findings.front().field, "serial");
        }
        for (const QString &reason : {QString(2001, 'x'), QString("a\x07")}) {
            QCOMPARE(voidFact(*records, uuid(4), reason).error().code, ErrorCode::Usage);
            QCOMPARE(cancelOrder(*records, "A-1001", reason).error().code, ErrorCode::Usage);
        }
    }
    void aConflictOfLongNamesCanBeDecidedAgain()
    {
        auto records = office();
        const QString pair(400, '7');
        imported(*records,
                 {with(briFields(), {{"pair", pair}, {"circuit_number", QString(200, 'C')}}),
                  with(briFields(), {{"pair", pair}, {"order_number", "A-1009"}})});
        const auto decided = decideOrder(*records, "A-1009");
        QVERIFY2(decided, decided ? "" : qPrintable(decided.error().text()));
        const auto again = decideAgain(*records, decided->id);
        QVERIFY2(again, again ? "" : qPrintable(again.error().text()));
    }
    void voidsOnceAndWithAReason()
    {
        auto records = acceptedJob();
        QCOMPARE(voidFact(*records, uuid(4), "").error().code, ErrorCode::Usage);
        const auto id = voidFact(*records, uuid(4), "wrong pair");
        QVERIFY(id);
        QCOMPARE(voidFact(*records, uuid(4), "again").error().code, ErrorCode::Refused);
        QCOMPARE(voidFact(*records, *id, "undo").error().code, ErrorCode::Refused);
        QCOMPARE(voidFact(*records, uuid(77), "x").error().code, ErrorCode::NotFound);
        QCOMPARE(boardRows(*records, {})->front().stage, stageAt(Station::TurnUp));
    }
    void draftsAreKeptAndDropped()
    {
        auto records = office();
        imported(*records, {briFields()});
        QVERIFY(saveDrafts(*records, {{"A-1001", "loop", {{"dc_resistance_ohm", "61"}}}}));
        QCOMPARE(drafts(*records, "A-1001")->value("loop")["dc_resistance_ohm"], "61");
        QVERIFY(saveDrafts(*records, {{"A-1001", "loop", {}}}));
        QVERIFY(drafts(*records, "A-1001")->isEmpty());
    }
    void readerOfAnAnalogJob()
    {
        auto records = office();
        imported(*records, {analogFields()});
        QVERIFY(recordFile(*records, recordBytes(analogFields(), analogFacts()), "job.json"));
        QCOMPARE(toText(decideOrder(*records, "A-2001")->outcome), "accepted");
        const auto issued = issueCertificate(*records, {"A-2001", Paper::A4, {}, {}});
        QVERIFY2(issued, issued ? "" : qPrintable(issued.error().text()));
    }
};

QTEST_MAIN(ChainTest)
#include "ChainTest.moc"
