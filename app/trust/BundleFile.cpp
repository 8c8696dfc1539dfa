#include "app/trust/BundleFile.h"

#include "core/base/Json.h"

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

tl::expected<BundleFile, BadBundle> readBundle(const QByteArray &bytes, const QString &fileName)
{
    const auto object = parseJsonObject(bytes, fileName, 256'000'000);
    if (!object)
        return bad("damaged", {ErrorCode::BadInput,
                               QString("This is no whole bundle: it was cut on its way, or is "
                                       "another kind of file (%1).")
                                   .arg(object.error().message),
                               fileName});
    JsonReader reader(*object, fileName);
    BundleFile file;
    file.id = reader.filledText("id");
    file.key = reader.filledText("key");
    file.signature = reader.filledText("signature").toLatin1();
    const QJsonObject content = reader.raw("bundle").toObject();
    reader.done();
    if (const auto read = reader.result(); !read)
        return bad("damaged", read.error());
    // Held against the bytes first: a turned bit is damage, whatever it makes of the text.
    if (digestOf(content) != file.id)
        return bad("damaged", {ErrorCode::BadInput,
                               "The file was damaged on its way: its content is not what was "
                               "signed. Have it sent once more.",
                               fileName});
    auto bundle = Bundle::fromJson(content, fileName + ".bundle");
    if (!bundle)
        return bad("form", bundle.error());
    file.bundle = std::move(*bundle);
    return file;
}

} // namespace loopwright
