-- Public halves of the keys that sign.

-- name: newest_of
SELECT holder, public_key, endorsed_by, endorsement FROM public_key
WHERE holder = :holder ORDER BY id DESC LIMIT 1

-- name: find
SELECT holder, public_key, endorsed_by, endorsement FROM public_key
WHERE fingerprint = :fingerprint ORDER BY id DESC LIMIT 1

-- Why keys were made anew, and which of the older ones were revoked by it.
-- name: renewals
SELECT detail, recorded_utc, recorded_offset FROM event
WHERE subject = :subject AND kind = 'keys_renewed' ORDER BY sequence

-- name: all
SELECT holder, public_key, endorsed_by, endorsement, at_utc, at_offset FROM public_key ORDER BY id

-- name: add
INSERT INTO public_key (holder, fingerprint, public_key, endorsed_by, endorsement, at_utc,
                        at_offset, digest)
VALUES (:holder, :fingerprint, :public_key, :endorsed_by, :endorsement, :at_utc, :at_offset,
        :digest)
