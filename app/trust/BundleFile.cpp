#include "app/trust/BundleFile.h"

#include "core/base/Json.h"
#include "core/history/PublicKey.h"

namespace loopwright {

namespace {

/// A signature over a bundle can be taken for one over nothing else.
QByteArray signedText(const QString &id)
{
    return "bundle1\n" + id.toLatin1() + '\n';
}

tl::unexpected<BadBundle> bad(const char *code, Error error)
{
    return tl::unexpected(BadBundle{code, std::move(error)});
}

} // namespace

BundleFile signedBundle(Bundle bundle, const SigningKey &key)
{
    const QString id = digestOf(bundle.toJson());
    return {std::move(bundle), id, key.fingerprint(), key.sign(signedText(id))};
}

bool BundleFile::isSignedBy(const QByteArray &publicKey) const
{
    return loopwright::isSignedBy(publicKey, signedText(id), signature);
}

QByteArray BundleFile::bytes() const
{
    return canonicalJson(QJsonObject{{"bundle", bundle.toJson()},
                                     {"id", id},
                                     {"key", key},
                                     {"signature", QString::fromLatin1(signature)}}) +
           '\n';
}

namespace {

/// What else the file is, as far as its beginning tells; empty if it may be a bundle.
QString otherKind(const QByteArray &bytes)
{
    if (bytes.trimmed().isEmpty())
        return "The file is empty: it was not written to its end. Have it written once more.";
    if (bytes.startsWith("%PDF"))
        return "This is a PDF, a paper, and no bundle.";
    if (bytes.startsWith("SQLite format 3"))
        return "These are whole records and no bundle.";
    if (!bytes.startsWith('{') && readPublicKeys(bytes, {}))
        return "This file holds keys and no bundle: van add takes it in.";
    return {};
}

/// A text in JSON that is something else.
QString otherKind(const QJsonObject &object)
{
    if (object.contains("facts"))
        return "This is the record of a job and no bundle: record takes it in.";
    return object.contains("bundle")
               ? QString()
               : QString("This is no bundle: something else wrote it, for another purpose.");
}

} // namespace

tl::expected<BundleFile, BadBundle> readBundle(const QByteArray &bytes, const QString &fileName)
{
    const auto damaged = [&fileName](const QString &sentence) {
        return bad("damaged", {ErrorCode::BadInput, sentence, fileName});
    };
    if (const QString other = otherKind(bytes); !other.isEmpty())
        return damaged(other);
    const auto object = parseJsonObject(bytes, fileName, 256'000'000);
    if (!object)
        return damaged("This is no whole bundle: it was cut on its way, or is another kind of "
                       "file. Have it sent once more.");
    if (const QString other = otherKind(*object); !other.isEmpty())
        return damaged(other);
    JsonReader reader(*object, fileName);
    BundleFile file;
    file.id = reader.filledText("id");
    file.key = reader.filledText("key");
    file.signature = reader.filledText("signature").toLatin1();
    const QJsonObject content = reader.raw("bundle").toObject();
    reader.done();
    // Held against the bytes first: a turned bit is damage, whatever it makes of the text.
    if (!reader.result() || digestOf(content) != file.id)
        return damaged("The file was damaged on its way: its content is not what was signed. Have "
                       "it sent once more.");
    auto bundle = Bundle::fromJson(content, fileName + ".bundle");
    if (!bundle)
        return bad("form", bundle.error());
    file.bundle = std::move(*bundle);
    return file;
}

} // namespace loopwright
