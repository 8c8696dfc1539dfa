#pragma once
// The register: serving offices, the people and the instruments. The numbers of an office's test
// lines are unpublished; they are a type of their own that no certificate and no customer export
// takes.

#include "core/base/Json.h"

#include <QDate>
#include <QList>
#include <QString>

namespace loopwright {

struct ServingOffice
{
    QString key; ///< as in orders.csv
    QString name;
    QString protocolVariant; ///< habit of its switch; an order may name another
    QString address = {};
    QString telephone = {};
    QString troubleTelephone = {}; ///< whom a customer calls if a line of it fails

    QJsonObject toJson() const; ///< what its digest is taken over

    bool operator==(const ServingOffice &) const = default;
};

/// Who issues the certificates: stands on every paper for a customer.
struct Issuer
{
    QString name;
    QString address = {};
    QString telephone = {};
    QString troubleTelephone = {};
    QString troubleHours = {}; ///< "Monday to Friday, 8:00 to 17:00"

    QJsonObject toJson() const;
    bool operator==(const Issuer &) const = default;
};

/// A number that is kept for installers and is never shown to a customer. There is no implicit way
/// to a text.
class UnpublishedNumber
{
public:
    UnpublishedNumber() = default;
    explicit UnpublishedNumber(QString number)
        : m_number(std::move(number))
    {
    }
    /// For the installer's screen and an export that was asked for as internal, nothing else.
    QString forInstallersOnly() const { return m_number; }
    bool operator==(const UnpublishedNumber &) const = default;

private:
    QString m_number;
};

struct TestLine
{
    QString label; ///< e.g. "loopback", "milliwatt"
    UnpublishedNumber number;

    bool operator==(const TestLine &) const = default;
};

/// Reads "label=number;label=number". Nothing if an entry lacks its label or number, or a label
/// stands there twice.
std::optional<QList<TestLine>> testLinesFromText(const QString &text);

enum class Role
{
    Installer,
    Dispatcher,
    Supervisor
};
template<>
struct EnumCodes<Role>
{
    static constexpr std::pair<Role, const char *> table[] = {{Role::Installer, "installer"},
                                                              {Role::Dispatcher, "dispatcher"},
                                                              {Role::Supervisor, "supervisor"}};
};

struct Person
{
    QString key;
    QString name;
    Role role = Role::Installer;
    QString login = {}; ///< of the machines' users; empty: he says who he is

    bool operator==(const Person &) const = default;
};

/// The key of one who has no name.
QString nameOf(const Person &person);
/// The person's name; the key of one that is not registered.
QString nameOf(const QList<Person> &people, const QString &key);
bool isRegistered(const QList<Person> &people, const QString &key);
/// nameOf() with "(not registered)" behind it if that is so: for what is read as evidence.
QString markedNameOf(const QList<Person> &people, const QString &key);

struct Calibration
{
    QDate on;                 ///< day of calibration; may be invalid if none is required
    std::optional<QDate> due; ///< last day on which it holds; nothing: not required

    bool holdsOn(QDate day) const { return !due || (on <= day && day <= *due); }
    QJsonObject toJson() const;
    static Calibration read(JsonReader &reader);
    bool operator==(const Calibration &) const = default;
};

struct Instrument
{
    QString key;
    QString serial;
    QString kind;
    QList<Calibration> calibrations; ///< oldest first; a later one is a further fact
    /// Entered on site from what stands on it (InstrumentLabel.h); the office has not confirmed it.
    bool asLabelled = false;

    bool calibratedOn(QDate day) const;
    bool operator==(const Instrument &) const = default;

    QJsonObject toJson() const;
    static Instrument read(JsonReader &reader);
};

} // namespace loopwright
