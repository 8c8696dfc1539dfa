#pragma once
// What a certificate says, as plain data. It is customer-safe by type: nothing in it, and nothing
// that it is made from, is an UnpublishedNumber; notes that a person typed during the job are not
// taken over, and every other free text passes a NumberGuard (MakeCertificate.h). Its canonical
// JSON is what is stored, attached to the PDF as record.json, and digested; a copy has the same
// content, number and digest.

#include "core/acceptance/Decision.h"
#include "core/office/Office.h"
#include "core/order/Services.h"

#include <QPoint>

namespace loopwright {

/// A signature as it was drawn, in a field 4000 wide and 1000 high, y downwards.
struct Signature
{
    QString role; ///< "installer" or "customer"
    QString name;
    Moment at;
    std::vector<std::vector<QPoint>> strokes;

    bool operator==(const Signature &) const = default;
};
using Signatures = std::vector<Signature>;
/// Null if nobody signed in that role.
const Signature *signatureOf(const Signatures &signatures, const QString &role);
QJsonArray toJson(const Signatures &signatures);
/// BadInput with its place.
Result<Signatures> readSignatures(const QJsonArray &list, const QString &place);
inline constexpr int signatureWidth = 4000;
inline constexpr int signatureHeight = 1000;

/// A label and what stands beside it.
struct CertificateLine
{
    QString name;
    QString value;

    bool operator==(const CertificateLine &) const = default;
};
/// "B1: voice; B2: data at 64 kbit/s"
QString inOneLine(const std::vector<CertificateLine> &lines);

struct CertificateTerminal
{
    int number = 1;
    QString dn;          ///< for a person, e.g. "217-555-0143"
    QString dnGrouped;   ///< for reading aloud, by the plan of its country; else without groups
    QString toKey;       ///< what is keyed in, without gaps
    QString spid;        ///< digits; empty if the line has none
    QString spidGrouped; ///< "217 555 0143 01 01"
    QString tei;         ///< "automatic", a number, or empty if there is no layer 2
    QString services;    ///< "voice, data"

    bool operator==(const CertificateTerminal &) const = default;
};

struct CertificateException
{
    QString by;
    QString because;
    Moment at;

    bool operator==(const CertificateException &) const = default;
};

/// One figure as it was read.
struct CertificateReading
{
    QString what;       ///< "DC resistance"
    QString value;      ///< with its unit
    QString limit;      ///< empty if there is none
    QString instrument; ///< key
    QString sure;       ///< "± 0.2 dB", "as read", "predicted"

    bool operator==(const CertificateReading &) const = default;
};

struct CertificateCriterion
{
    QString key;
    QString name;
    Station station = Station::Acceptance; ///< of the job line
    CriterionOutcome outcome = CriterionOutcome::Missing;
    QString measured; ///< with its unit; empty if nothing is measured
    QString limit;    ///< empty if there is none
    QString source;   ///< of the limit
    QString meaning;  ///< in plain words
    QString reason;   ///< in the trade's words
    QString grade;    ///< "good", "marginal", "poor"; empty of what has no classes
    std::vector<CertificateReading> readings;
    std::optional<CertificateException> excepted;

    bool operator==(const CertificateCriterion &) const = default;
};

struct CertificateRun
{
    QString when;           ///< from and to, with the zone
    QString text;           ///< path, length, rate
    QString counts;         ///< errors, seconds, unavailable time, losses of synchronisation, slips
    QString result;         ///< what became of it, and why
    bool struckOut = false; ///< voided; the result says why and by whom
    RunOutcome outcome = RunOutcome::Other;

    bool operator==(const CertificateRun &) const = default;
};

/// What was ordered, and beside it what was delivered.
struct CertificateDelivery
{
    QString name, ordered, delivered;

    bool operator==(const CertificateDelivery &) const = default;
};

/// The certificate that this one takes the place of, and why.
struct CertificateReplaced
{
    QString number;
    Moment issuedAt;
    QStringList because;

    bool operator==(const CertificateReplaced &) const = default;
};

/// Whom the customer calls if the line fails.
struct CertificateCall
{
    QString telephone; ///< empty if the register names none
    QString hours;
    QString name; ///< what to name: the circuit

    bool operator==(const CertificateCall &) const = default;
};

struct CertificateInstrument
{
    QString key;
    QString kind;
    QString serial;
    /// That held when it was used last, else the newest before; none: it is not registered, or was
    /// never calibrated before.
    std::optional<Calibration> calibration = {};
    bool held = false;       ///< on the day of its last use
    bool asLabelled = false; ///< Instrument::asLabelled

    bool operator==(const CertificateInstrument &) const = default;
};

struct CertificateContent
{
    QString number;  ///< CertificateNumber::text()
    Moment issuedAt; ///< when it was first issued; copies carry their own date outside the content
    OrderOutcome outcome = OrderOutcome::Accepted;
    QString decision; ///< id of the decision that it attests
    QString limitSet; ///< version

    std::optional<CertificateReplaced> replaces;
    Issuer issuer; ///< without a name if none is registered
    CertificateCall call;

    QString order, orderType, customer, premises, contact, circuit, office;
    LineKind kind = LineKind::Bri;
    QString variant;                      ///< key
    QString variantName;                  ///< for a person
    std::vector<CertificateLine> service; ///< "B1": "voice, data at 64 kbit/s", …
    std::vector<CertificateTerminal> terminals;
    std::vector<CertificateLine> settings; ///< what every terminal is programmed with
    std::vector<CertificateDelivery> delivery;

    std::vector<CertificateCriterion> criteria;
    bool runNeeded = false; ///< an error-rate run is needed: "N runs were made"
    std::vector<CertificateRun> runs;
    QString decisionRule;   ///< one sentence: when a figure is met
    QString proves;         ///< what the counted run proves, in the trade's words
    QString provesPlainly;  ///< the same for the customer
    QJsonObject proven;     ///< figures behind it
    QStringList notes;      ///< what the path covers, where the run was made
    QStringList hazards;    ///< dangerous voltages that were read, and how each was closed
    QStringList late;       ///< what was recorded more than a day after it was done
    QStringList notCovered; ///< by the tests
    QStringList mustKnow;   ///< by the customer: power, emergency calls

    QString testedFrom, testedTo; ///< days of the counted evidence, YYYY-MM-DD; empty without
    QStringList installers;       ///< names of those who recorded it
    std::vector<CertificateInstrument> instruments;
    Signatures signatures;

    /// "2 runs were made", "2 runs were made, 1 of them struck out"; empty if none is needed.
    /// The first words are the same for every number, so that they are found by searching.
    QString runsSentence() const;
    /// "Accepted", "Accepted by exception".
    QString verdict() const;
    /// One plain sentence that agrees with every criterion.
    QString verdictSentence() const;

    QJsonObject toJson() const;
    QByteArray record() const { return canonicalJson(toJson()); } ///< record.json
    QString digest() const { return sha256Hex(record()); }
    static Result<CertificateContent> fromJson(const QJsonObject &object, const QString &place);

    bool operator==(const CertificateContent &) const = default;
};

} // namespace loopwright
