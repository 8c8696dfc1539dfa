#include "app/cli/commands/Keys.h"

#include "app/actions/Keys.h"
#include "app/actions/OutFile.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

QString whose(const PublicKey &key)
{
    return key.isIssuers() ? QString("issuer") : "station " + key.holder;
}

class KeyShow : public Command
{
public:
    void declare(Options &) override {}

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_ASSIGN(const auto known, knownKeys(*records));
        QJsonArray keys;
        ColumnLayout table({"key of", "fingerprint", "since", "in use", "secret half"});
        for (const KnownKey &each : known) {
            keys << each.toJson();
            table.add({whose(each.key), groupedFingerprint(each.key.fingerprint()),
                       each.since.text().left(10),
                       each.revokedAt ? "revoked"
                       : each.inUse   ? "yes"
                                      : "no",
                       each.here ? "on this machine" : "not here"});
        }
        const QString &folder = records->keys().path();
        const QString text =
            known.empty() ? QString("No key was made yet: the first certificate makes them, or key "
                                    "export.\n")
                          : table.text() + "\nSecret halves lie in " + folder + '\n';
        return Answer::of(QJsonObject{{"keys", keys}, {"folder", folder}}, text);
    }
};

class KeyExport : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("--out", m_out, "Where they are written, a line each", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_TRY(checkOut(m_out, FileKind::PublicKeys));
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsWritableOrNot());
        LOOPWRIGHT_ASSIGN(const auto lines, publicKeyFile(*records));
        LOOPWRIGHT_TRY(writeOut(m_out, FileKind::PublicKeys, lines));
        LOOPWRIGHT_ASSIGN(const auto keys, readPublicKeys(lines, m_out));
        QJsonArray json;
        LabelledLines text;
        for (const PublicKey &key : keys) {
            json << key.toJson();
            text.add("Key of " + whose(key), groupedFingerprint(key.fingerprint()));
        }
        return Answer::of(QJsonObject{{"keys", json}, {"file", m_out}},
                          text.add("File", m_out).text());
    }

private:
    QString m_out;
};

class KeyRenew : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("--because", m_renewal.because, "Why: lost, read by others, in use too long",
                     Given::Always);
        options.flag("--issuer", m_renewal.issuersToo,
                     "The issuer's key too; whoever checks certificates needs the new one");
        options.flag("--revoke", m_renewal.revokeOld,
                     "Others may hold the old one: leave it out of key export, so that what it "
                     "signed holds only where these records know it");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto renewed, renewKeys(*records, m_renewal));
        LabelledLines text;
        for (const PublicKey &key : renewed.made)
            text.add("New key of " + whose(key), groupedFingerprint(key.fingerprint()));
        return Answer::of(renewed.toJson(), text.add("Station", renewed.station).text());
    }

private:
    Renewal m_renewal;
};

} // namespace

std::unique_ptr<Command> makeKeyShow()
{
    return std::make_unique<KeyShow>();
}

std::unique_ptr<Command> makeKeyExport()
{
    return std::make_unique<KeyExport>();
}

std::unique_ptr<Command> makeKeyRenew()
{
    return std::make_unique<KeyRenew>();
}

} // namespace loopwright
