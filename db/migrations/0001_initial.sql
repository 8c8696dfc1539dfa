-- The first form of the records.
-- readable-from: 0001
--
-- Groups: register, plans, facts, verdicts, history, derived, drafts. Facts, verdicts and history
-- are only ever added to; triggers refuse the rest. A column `digest` is the SHA-256 over what the
-- row says, in words that are the same in every database. An event also seals each row that was
-- written with it, all its columns as they are stored (`event.sealed`), and so shows what got round
-- a trigger. For that every table has an `id` of its own but those that seal themselves.
-- A list of words is checked by comparisons where rows come by the hundred thousand: for
-- `x IN (three or more)` SQLite makes a temporary table at each insertion, which costs more than it.
-- Times are two columns: x_utc (ISO 8601 with milliseconds, ending in Z, so that they sort as text)
-- and x_offset (seconds east of UTC, the writer's). Codes are text.

-- What is said of the database itself: 'database' (a UUID), 'station' (the tag of this set of
-- records: letters and digits that are not taken for one another; stands in the numbers of its
-- certificates, so that two stations do not give out the same), 'board_limits', 'readable_from' (kept by the migrator).
CREATE TABLE meta (
    id INTEGER PRIMARY KEY,
    key TEXT NOT NULL UNIQUE,
    value TEXT NOT NULL
) STRICT;

INSERT INTO meta (key, value)
SELECT 'database',
       substr(h, 1, 8) || '-' || substr(h, 9, 4) || '-4' || substr(h, 14, 3) || '-'
           || substr('89ab', 1 + (abs(random()) % 4), 1) || substr(h, 18, 3) || '-' || substr(h, 21, 12)
FROM (SELECT lower(hex(randomblob(16))) AS h);
INSERT INTO meta (key, value)
SELECT 'station', group_concat(substr('ABCDEFGHJKMNPQRSTUVWXYZ23456789', 1 + abs(random() % 31), 1), '')
FROM (VALUES (1), (2), (3), (4), (5), (6));

-- Register ------------------------------------------------------------------------------------

CREATE TABLE office (
    id INTEGER PRIMARY KEY,
    office TEXT NOT NULL UNIQUE CHECK (office <> ''),
    name TEXT NOT NULL,
    protocol_variant TEXT NOT NULL,
    address TEXT NOT NULL,
    telephone TEXT NOT NULL,
    trouble_telephone TEXT NOT NULL, -- whom a customer calls if a line fails
    digest TEXT NOT NULL CHECK (length(digest) = 64)
) STRICT;

-- Who issues the certificates: one row, or none until it is said.
CREATE TABLE issuer (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    name TEXT NOT NULL CHECK (name <> ''),
    address TEXT NOT NULL,
    telephone TEXT NOT NULL,
    trouble_telephone TEXT NOT NULL,
    trouble_hours TEXT NOT NULL,
    digest TEXT NOT NULL CHECK (length(digest) = 64)
) STRICT;

-- Unpublished numbers of an office's test lines. Apart from the office, so that nothing that reads
-- offices for a customer document can carry one along.
CREATE TABLE office_test_line (
    id INTEGER PRIMARY KEY,
    office INTEGER NOT NULL REFERENCES office (id),
    label TEXT NOT NULL CHECK (label <> ''),
    number TEXT NOT NULL CHECK (number <> ''),
    UNIQUE (office, label)
) STRICT;

CREATE TABLE installer (
    id INTEGER PRIMARY KEY,
    installer TEXT NOT NULL UNIQUE CHECK (installer <> ''),
    name TEXT NOT NULL,
    role TEXT NOT NULL CHECK (role IN ('installer', 'dispatcher', 'supervisor')),
    login TEXT NOT NULL, -- empty where none is said
    pin TEXT NOT NULL,   -- argon2id with its salt; empty where none is set
    digest TEXT NOT NULL CHECK (length(digest) = 64)
) STRICT;

CREATE UNIQUE INDEX installer_login ON installer (login) WHERE login <> '';

CREATE TABLE instrument (
    id INTEGER PRIMARY KEY,
    instrument TEXT NOT NULL UNIQUE CHECK (instrument <> ''),
    serial TEXT NOT NULL,
    kind TEXT NOT NULL,
    -- Entered on site from what stands on it: then these days are its calibration, until the office
    -- confirms it; what the office says is a row of the next table.
    as_labelled INTEGER NOT NULL CHECK (as_labelled IN (0, 1)),
    label_on TEXT CHECK (date(label_on) IS label_on),
    label_due TEXT CHECK (date(label_due) IS label_due), -- NULL: none is required
    digest TEXT NOT NULL CHECK (length(digest) = 64),
    CHECK (as_labelled OR (label_on IS NULL AND label_due IS NULL))
) STRICT;

-- A fact: each calibration is a further row.
CREATE TABLE calibration (
    id INTEGER PRIMARY KEY,
    instrument INTEGER NOT NULL REFERENCES instrument (id),
    calibrated_on TEXT CHECK (date(calibrated_on) IS calibrated_on),
    calibration_due TEXT CHECK (date(calibration_due) IS calibration_due), -- NULL: none is required
    digest TEXT NOT NULL UNIQUE CHECK (length(digest) = 64)
) STRICT;
CREATE INDEX calibration_instrument ON calibration (instrument);
-- The newest of each instrument: of its label, where that is all there is.
CREATE VIEW calibration_in_force (instrument, serial, kind, calibrated_on, due) AS
    SELECT i.instrument, i.serial, i.kind,
           CASE WHEN i.as_labelled THEN i.label_on ELSE c.calibrated_on END,
           CASE WHEN i.as_labelled THEN i.label_due ELSE c.calibration_due END
    FROM instrument AS i LEFT JOIN calibration AS c ON c.id =
        (SELECT n.id FROM calibration AS n WHERE n.instrument = i.id
         ORDER BY n.calibrated_on DESC NULLS LAST, n.id DESC LIMIT 1);

-- Public halves of the keys that sign; the secret halves lie outside the records. The newest of a
-- holder is in use, older ones stay known.
CREATE TABLE public_key (
    id INTEGER PRIMARY KEY,
    holder TEXT NOT NULL CHECK (holder = 'issuer' OR length(holder) = 6), -- a station's tag
    fingerprint TEXT NOT NULL CHECK (length(fingerprint) = 32),
    public_key TEXT NOT NULL CHECK (length(public_key) = 64),
    endorsed_by TEXT NOT NULL, -- fingerprint of the issuer's key; empty for an issuer's
    endorsement TEXT NOT NULL, -- its signature; likewise
    at_utc TEXT NOT NULL,
    at_offset INTEGER NOT NULL,
    digest TEXT NOT NULL CHECK (length(digest) = 64),
    UNIQUE (fingerprint, endorsed_by) -- a van's own is endorsed anew by the office that it joins
) STRICT;
CREATE INDEX public_key_holder ON public_key (holder);

-- Plans ---------------------------------------------------------------------------------------

-- Customer and premises belong to the order: people move, and an order keeps what was true for it.
CREATE TABLE circuit (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (length(uuid) = 36),
    circuit_number TEXT NOT NULL UNIQUE CHECK (circuit_number <> '')
) STRICT;

-- `content` is the order; the columns beside it are taken from it for keys and indexes. The keys are
-- equal for the same premises and the same pair however they were typed.
CREATE TABLE service_order (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (length(uuid) = 36),
    order_number TEXT NOT NULL UNIQUE CHECK (order_number <> ''),
    circuit INTEGER NOT NULL REFERENCES circuit (id),
    office INTEGER NOT NULL REFERENCES office (id),
    order_type TEXT NOT NULL
        CHECK (order_type = 'new' OR order_type = 'change' OR order_type = 'move'
               OR order_type = 'disconnect' OR order_type = 'record_only'
               OR order_type = 'repair'),
    due_date TEXT NOT NULL CHECK (date(due_date) IS due_date),
    installer TEXT NOT NULL, -- as ordered; empty where none is named
    premises_key TEXT NOT NULL,
    pair_key TEXT NOT NULL,
    pair_identity TEXT NOT NULL, -- its letters and digits alone: how readings are held against it
    status TEXT NOT NULL CHECK (status = 'open' OR status = 'completed' OR status = 'cancelled'),
    completed_rank INTEGER UNIQUE, -- rises with each completion: the circuit's last one is working
    held INTEGER NOT NULL CHECK (held IN (0, 1)),
    content TEXT NOT NULL CHECK (json_valid(content)),
    digest TEXT NOT NULL CHECK (length(digest) = 64), -- over content, status and held
    CHECK ((completed_rank IS NOT NULL) = (status = 'completed'))
) STRICT;
CREATE INDEX service_order_circuit ON service_order (circuit, completed_rank);
CREATE INDEX service_order_office ON service_order (office, circuit); -- all lines of an office
CREATE INDEX service_order_premises ON service_order (premises_key);
CREATE INDEX service_order_pair ON service_order (pair_identity) WHERE pair_identity <> '';
CREATE INDEX service_order_repair ON service_order (id) WHERE order_type = 'repair';
CREATE INDEX service_order_held ON service_order (id) WHERE held = 1;

CREATE TABLE order_terminal (
    id INTEGER PRIMARY KEY,
    service_order INTEGER NOT NULL REFERENCES service_order (id),
    number INTEGER NOT NULL CHECK (number BETWEEN 1 AND 8),
    dn TEXT NOT NULL,
    dn_key TEXT NOT NULL, -- equal for the same number however it was typed
    spid TEXT NOT NULL,   -- digits
    tei TEXT NOT NULL,
    UNIQUE (service_order, number)
) STRICT;
CREATE INDEX order_terminal_dn ON order_terminal (dn_key) WHERE dn_key <> '';
CREATE INDEX order_terminal_spid ON order_terminal (spid) WHERE spid <> '';

-- What must not be used twice. `scope` is the office's code for a SPID and a pair, and empty for a
-- DN, which is one everywhere.
--
-- A value belongs to one circuit at a time, not to one row: while a change order is open, its
-- circuit holds the same number as working (by the order that was completed) and as planned (by the
-- one that is open). A unique index over (kind, scope, value) alone would forbid that. So the index
-- makes a row unique per order, and a trigger refuses a row whose value another circuit holds. The
-- store asks before it writes, under the write lock that the transaction took when it began, so
-- nothing can come between the question and the writing.
CREATE TABLE assignment (
    id INTEGER PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind = 'dn' OR kind = 'spid' OR kind = 'pair'),
    scope TEXT NOT NULL CHECK ((scope = '') = (kind = 'dn')),
    value TEXT NOT NULL CHECK (value <> ''),
    circuit INTEGER NOT NULL REFERENCES circuit (id),
    service_order INTEGER NOT NULL REFERENCES service_order (id),
    state TEXT NOT NULL CHECK (state = 'planned' OR state = 'working' OR state = 'released')
) STRICT;
CREATE UNIQUE INDEX assignment_held ON assignment (kind, scope, value, service_order)
    WHERE state <> 'released';
CREATE INDEX assignment_circuit ON assignment (circuit, state);
CREATE INDEX assignment_pair ON assignment (scope, value) WHERE kind = 'pair'; -- a cable's, released too
CREATE INDEX assignment_order ON assignment (service_order, state);

CREATE TRIGGER assignment_one_circuit BEFORE INSERT ON assignment WHEN NEW.state <> 'released'
BEGIN
    SELECT RAISE(ABORT, 'another circuit holds this value')
    WHERE EXISTS (SELECT 1 FROM assignment
                  WHERE kind = NEW.kind AND scope = NEW.scope AND value = NEW.value
                    AND state <> 'released' AND circuit <> NEW.circuit);
END;
-- A row is claimed, goes on to working, and is released; it does not come back, and it does not
-- change hands.
CREATE TRIGGER assignment_one_way BEFORE UPDATE ON assignment
WHEN OLD.state = 'released' OR NEW.kind <> OLD.kind OR NEW.scope <> OLD.scope
     OR NEW.value <> OLD.value OR NEW.circuit <> OLD.circuit
     OR NEW.service_order <> OLD.service_order
     OR (OLD.state = 'working' AND NEW.state = 'planned')
BEGIN
    SELECT RAISE(ABORT, 'an assignment only goes from planned to working to released');
END;

-- What circuits want or have, by the orders themselves: open orders, held ones too, and the newest
-- completed order of each circuit; repairs want nothing. The audit compares it with the assignments.
CREATE VIEW wanted_value (kind, scope, value, circuit, service_order, held) AS
    WITH counted AS (
        SELECT o.id, o.circuit, o.held, o.pair_key, f.office
        FROM service_order AS o JOIN office AS f ON f.id = o.office
        WHERE o.order_type <> 'disconnect' AND o.order_type <> 'repair'
          AND (o.status = 'open'
               OR o.completed_rank = (SELECT max(w.completed_rank) FROM service_order AS w
                                      WHERE w.circuit = o.circuit AND w.order_type <> 'repair'))
    )
    SELECT 'dn', '', t.dn_key, n.circuit, n.id, n.held
    FROM counted AS n JOIN order_terminal AS t ON t.service_order = n.id WHERE t.dn_key <> ''
    UNION ALL SELECT 'spid', n.office, t.spid, n.circuit, n.id, n.held
    FROM counted AS n JOIN order_terminal AS t ON t.service_order = n.id WHERE t.spid <> ''
    UNION ALL SELECT 'pair', n.office, n.pair_key, n.circuit, n.id, n.held
    FROM counted AS n WHERE n.pair_key <> '';

-- Facts ---------------------------------------------------------------------------------------

-- `content` is the fact, visits, voids and exceptions among them; the other columns are taken from
-- it. `voids` is the fact that a void makes count no longer.
CREATE TABLE fact (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (length(uuid) = 36),
    service_order INTEGER NOT NULL REFERENCES service_order (id),
    kind TEXT NOT NULL CHECK (kind <> ''),
    at_utc TEXT NOT NULL,
    at_offset INTEGER NOT NULL,
    installer TEXT NOT NULL,
    instrument TEXT NOT NULL,
    voids TEXT REFERENCES fact (uuid) CHECK ((voids IS NOT NULL) = (kind = 'void')),
    content TEXT NOT NULL CHECK (json_valid(content)),
    digest TEXT NOT NULL CHECK (length(digest) = 64)
) STRICT;
CREATE INDEX fact_order ON fact (service_order, at_utc);
CREATE INDEX fact_instrument ON fact (instrument, service_order) WHERE instrument <> '';
CREATE INDEX fact_visit ON fact (installer, at_utc) WHERE kind IN ('visit', 'self_test');
-- One at each station at most; two stations may strike out the same fact.
CREATE INDEX fact_voids ON fact (voids) WHERE voids IS NOT NULL;

-- Verdicts ------------------------------------------------------------------------------------

CREATE TABLE limit_set (
    id INTEGER PRIMARY KEY,
    version TEXT NOT NULL UNIQUE CHECK (version <> ''),
    valid_from TEXT NOT NULL CHECK (date(valid_from) IS valid_from),
    content TEXT NOT NULL CHECK (json_valid(content)),
    digest TEXT NOT NULL CHECK (length(digest) = 64)
) STRICT;
CREATE INDEX limit_set_day ON limit_set (valid_from);

-- The whole input and the whole result, so that it can be decided again and compared byte by byte.
CREATE TABLE decision (
    id INTEGER PRIMARY KEY,
    decision TEXT NOT NULL UNIQUE CHECK (decision <> ''),
    service_order INTEGER NOT NULL REFERENCES service_order (id),
    outcome TEXT NOT NULL CHECK (outcome IN
        ('accepted', 'accepted_with_exception', 'not_accepted', 'incomplete')),
    limit_set TEXT NOT NULL REFERENCES limit_set (version),
    at_utc TEXT NOT NULL,
    at_offset INTEGER NOT NULL,
    input TEXT NOT NULL CHECK (json_valid(input)),
    input_digest TEXT NOT NULL CHECK (length(input_digest) = 64),
    result TEXT NOT NULL CHECK (json_valid(result)),
    digest TEXT NOT NULL CHECK (length(digest) = 64)
) STRICT;
CREATE INDEX decision_order ON decision (service_order);

CREATE TABLE certificate (
    id INTEGER PRIMARY KEY,
    number TEXT NOT NULL UNIQUE CHECK (number <> ''),
    service_order INTEGER NOT NULL REFERENCES service_order (id),
    decision INTEGER NOT NULL REFERENCES decision (id),
    at_utc TEXT NOT NULL,
    at_offset INTEGER NOT NULL,
    content TEXT NOT NULL CHECK (json_valid(content)),
    digest TEXT NOT NULL CHECK (length(digest) = 64),
    claims TEXT NOT NULL -- what the square on the paper holds, with its signature
) STRICT;
CREATE INDEX certificate_order ON certificate (service_order);

-- Each file that was made of a certificate; the first is the original, the others are copies, or
-- further issues that were signed later (the event has the signatures).
CREATE TABLE certificate_issue (
    id INTEGER PRIMARY KEY,
    certificate INTEGER NOT NULL REFERENCES certificate (id),
    issue INTEGER NOT NULL CHECK (issue > 0),
    file_sha256 TEXT NOT NULL CHECK (length(file_sha256) = 64),
    paper TEXT NOT NULL CHECK (paper IN ('a4', 'letter')),
    copy INTEGER NOT NULL CHECK (copy = (issue > 1)),
    at_utc TEXT NOT NULL,
    at_offset INTEGER NOT NULL,
    UNIQUE (certificate, issue)
) STRICT;
CREATE INDEX certificate_issue_file ON certificate_issue (file_sha256);

-- History -------------------------------------------------------------------------------------

-- One chain per subject; each event holds the digest of the one before. Over all of them runs the log
-- of the station, in the order in which they were recorded: `log_digest` is taken over the event's
-- place in the log, the station, the log_digest before, the event's digest and the rows that it sealed.
CREATE TABLE event (
    log_position INTEGER PRIMARY KEY CHECK (log_position > 0),
    subject TEXT NOT NULL CHECK (subject = 'register' OR subject GLOB 'circuit:?*'),
    sequence INTEGER NOT NULL CHECK (sequence > 0),
    order_number TEXT NOT NULL, -- empty where no single order is meant
    actor TEXT NOT NULL CHECK (actor <> ''),
    at_utc TEXT NOT NULL,
    at_offset INTEGER NOT NULL,
    recorded_utc TEXT NOT NULL,
    recorded_offset INTEGER NOT NULL,
    kind TEXT NOT NULL CHECK (kind <> ''),
    detail TEXT NOT NULL CHECK (json_valid(detail)),
    previous TEXT NOT NULL,
    digest TEXT NOT NULL CHECK (length(digest) = 64),
    station TEXT NOT NULL CHECK (length(station) = 6),
    sealed TEXT NOT NULL, -- a line for each row: table, id, digest of its columns or '-' if it went
    log_digest TEXT NOT NULL CHECK (length(log_digest) = 64),
    UNIQUE (subject, sequence)
) STRICT;
CREATE INDEX event_order ON event (order_number) WHERE order_number <> '';

-- The end of each chain, so that events cut off at the end are missed.
CREATE TABLE chain_head (
    subject TEXT PRIMARY KEY,
    events INTEGER NOT NULL CHECK (events > 0),
    digest TEXT NOT NULL CHECK (length(digest) = 64)
) STRICT, WITHOUT ROWID;

-- Vans and office -----------------------------------------------------------------------------

-- The stations that work is exchanged with: in the office its vans, in a van the office. The newest
-- tag of a name is in use; a lost one is believed no longer.
CREATE TABLE station (
    id INTEGER PRIMARY KEY,
    station TEXT NOT NULL CHECK (station <> ''),
    tag TEXT NOT NULL UNIQUE CHECK (length(tag) = 6),
    lost INTEGER NOT NULL CHECK (lost IN (0, 1)),
    log TEXT NOT NULL -- of a van as far as it told its log: the first 16 digits of each digest
) STRICT;
CREATE INDEX station_name ON station (station);

-- Each bundle that went out or came in. Of one that was brought back from here `chains` says how far
-- it told the chain of each subject.
CREATE TABLE bundle (
    id INTEGER PRIMARY KEY,
    bundle TEXT NOT NULL UNIQUE CHECK (length(bundle) = 64),
    kind TEXT NOT NULL CHECK (kind IN ('out', 'back')),
    station TEXT NOT NULL CHECK (length(station) = 6), -- tag of the van, whichever way it went
    chains TEXT NOT NULL CHECK (json_valid(chains))
) STRICT;

-- Orders that a van has: in the office where they are, in the van what was taken along. `content` is
-- the order as it went.
CREATE TABLE carried_order (
    id INTEGER PRIMARY KEY,
    service_order INTEGER NOT NULL REFERENCES service_order (id),
    station TEXT NOT NULL CHECK (length(station) = 6),
    bundle TEXT NOT NULL CHECK (length(bundle) = 64),
    content TEXT NOT NULL CHECK (json_valid(content)),
    at_utc TEXT NOT NULL,
    at_offset INTEGER NOT NULL,
    back INTEGER NOT NULL CHECK (back IN (0, 1)),
    UNIQUE (service_order, station, bundle)
) STRICT;
CREATE INDEX carried_order_out ON carried_order (service_order) WHERE back = 0;

-- The chains of other stations, event by event as they wrote them.
CREATE TABLE foreign_event (
    id INTEGER PRIMARY KEY,
    station TEXT NOT NULL CHECK (length(station) = 6),
    subject TEXT NOT NULL,
    sequence INTEGER NOT NULL CHECK (sequence > 0),
    order_number TEXT NOT NULL,
    actor TEXT NOT NULL,
    at_utc TEXT NOT NULL,
    at_offset INTEGER NOT NULL,
    recorded_utc TEXT NOT NULL,
    recorded_offset INTEGER NOT NULL,
    kind TEXT NOT NULL,
    detail TEXT NOT NULL CHECK (json_valid(detail)),
    previous TEXT NOT NULL,
    digest TEXT NOT NULL CHECK (length(digest) = 64),
    UNIQUE (station, subject, sequence)
) STRICT;
CREATE INDEX foreign_event_order ON foreign_event (order_number) WHERE order_number <> '';

-- Where a fact was recorded that was not recorded here, and the pair that its order had there. Several
-- stations may tell the same one.
CREATE TABLE foreign_fact (
    id INTEGER PRIMARY KEY,
    fact TEXT NOT NULL REFERENCES fact (uuid),
    station TEXT NOT NULL CHECK (length(station) = 6),
    pair TEXT NOT NULL,
    ahead INTEGER NOT NULL CHECK (ahead IN (0, 1)), -- of the clock here when it came, by more than a day
    UNIQUE (fact, station)
) STRICT;
CREATE INDEX foreign_fact_station ON foreign_fact (station);

-- The values of an order as a station told them last, and what they were when it took the order along:
-- what comes of all of them is made anew from these rows, so that it does not matter who told first.
-- Of 'office' `base` holds what the office itself says, `content` what came of all.
CREATE TABLE told_order (
    id INTEGER PRIMARY KEY,
    service_order INTEGER NOT NULL REFERENCES service_order (id),
    station TEXT NOT NULL CHECK (station = 'office' OR length(station) = 6),
    base TEXT NOT NULL CHECK (json_valid(base)),
    content TEXT NOT NULL CHECK (json_valid(content)),
    evidence INTEGER NOT NULL CHECK (evidence IN (0, 1)), -- it brought some
    known TEXT NOT NULL, -- ids of the facts that it told, or had from others, a space between
    events INTEGER NOT NULL, -- of its chain of the circuit that were told with the order
    UNIQUE (service_order, station)
) STRICT;

-- What stations say otherwise of one thing, until a person decides. One that no longer holds, or that
-- another with more in it took the place of, stands no more.
CREATE TABLE conflict (
    id INTEGER PRIMARY KEY,
    conflict TEXT NOT NULL UNIQUE CHECK (conflict <> ''), -- drawn from what it is about
    service_order INTEGER NOT NULL REFERENCES service_order (id),
    code TEXT NOT NULL,
    station TEXT NOT NULL, -- tag of the one that differs from here; empty where several may
    content TEXT NOT NULL CHECK (json_valid(content)),
    at_utc TEXT NOT NULL,
    at_offset INTEGER NOT NULL,
    stands INTEGER NOT NULL CHECK (stands IN (0, 1))
) STRICT;
CREATE INDEX conflict_order ON conflict (service_order);
CREATE TABLE settlement (
    id INTEGER PRIMARY KEY,
    conflict TEXT NOT NULL REFERENCES conflict (conflict), -- the newest counts
    side TEXT NOT NULL CHECK (side <> ''), -- 'office', 'both', or the tag of a station
    because TEXT NOT NULL CHECK (because <> ''),
    actor TEXT NOT NULL,
    at_utc TEXT NOT NULL,
    at_offset INTEGER NOT NULL
) STRICT;
CREATE INDEX settlement_conflict ON settlement (conflict);

-- Derived -------------------------------------------------------------------------------------

-- What the board shows of an order, kept by the transaction that changes what it comes from. Some of
-- the order is here again so that one index serves a page of a filtered board, and no order has to
-- be read for it.
CREATE TABLE order_state (
    service_order INTEGER PRIMARY KEY REFERENCES service_order (id),
    order_number TEXT NOT NULL,
    status TEXT NOT NULL CHECK (status = 'open' OR status = 'completed' OR status = 'cancelled'),
    stage TEXT NOT NULL CHECK (stage = 'identifiers' OR stage = 'loop' OR stage = 'safety'
        OR stage = 'turnup' OR stage = 'calls' OR stage = 'error_test' OR stage = 'acceptance'
        OR stage = 'certificate' OR stage = 'done'),
    outcome TEXT NOT NULL CHECK (outcome = 'accepted' OR outcome = 'accepted_with_exception'
        OR outcome = 'not_accepted' OR outcome = 'incomplete'),
    criterion TEXT NOT NULL, -- the first one that is open; empty where none is
    reason TEXT NOT NULL, -- why it is not accepted; empty where it is
    waiting_on TEXT NOT NULL, -- a word of a hold, or of the referral that stands; else empty
    paper INTEGER NOT NULL CHECK (paper IN (0, 1)), -- accepted, and its certificate not issued
    hazard INTEGER NOT NULL CHECK (hazard IN (0, 1)), -- open on its pair or at its premises
    hazard_at TEXT NOT NULL, -- when the one that the reason tells was read; empty where none is open
    away INTEGER NOT NULL CHECK (away IN (0, 1)), -- a van has it
    away_at TEXT NOT NULL, -- which ones, since when, in words; empty where it is at home
    conflict INTEGER NOT NULL CHECK (conflict IN (0, 1)), -- one that nobody has settled
    conflicts INTEGER NOT NULL CHECK (conflicts >= 0), -- how many
    due_date TEXT NOT NULL,
    promised_date TEXT NOT NULL, -- the first due date; the present one where it never was another
    office TEXT NOT NULL,
    installer TEXT NOT NULL,
    circuit_number TEXT NOT NULL,
    pair TEXT NOT NULL,
    cable TEXT NOT NULL, -- of the pair: what stands before its last dash
    variant TEXT NOT NULL,
    order_type TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('bri', 'analog')),
    customer TEXT NOT NULL,
    premises TEXT NOT NULL,
    taken_on TEXT NOT NULL, -- the local day on which it was taken in
    accepted_on TEXT NOT NULL, -- of its newest evidence; empty if it is not accepted
    visits INTEGER NOT NULL CHECK (visits >= 0), -- on which its evidence was made
    facts INTEGER NOT NULL CHECK (facts >= 0),
    runs INTEGER NOT NULL CHECK (runs >= 0),
    search TEXT NOT NULL -- every number and name of the order, folded
) STRICT;
-- One for each filter and for each sort of the board; which one serves a question is said in
-- db/BoardStatement.cpp. A page of a filter comes by due date.
CREATE INDEX order_state_due ON order_state (due_date, order_number);
CREATE INDEX order_state_number ON order_state (order_number);
CREATE INDEX order_state_stage ON order_state (stage, due_date, order_number);
CREATE INDEX order_state_outcome ON order_state (outcome, due_date, order_number);
CREATE INDEX order_state_criterion ON order_state (criterion, due_date, order_number);
CREATE INDEX order_state_office ON order_state (office, due_date, order_number);
CREATE INDEX order_state_installer ON order_state (installer, due_date, order_number);
CREATE INDEX order_state_customer ON order_state (customer, due_date, order_number);
CREATE INDEX order_state_circuit ON order_state (circuit_number, due_date, order_number);
CREATE INDEX order_state_pair ON order_state (pair, due_date, order_number);
-- Most orders of a grown database are completed; what is asked for is among the others.
CREATE INDEX order_state_open ON order_state (due_date, order_number) WHERE status = 'open';
CREATE INDEX order_state_pending ON order_state (due_date, order_number)
    WHERE status = 'open' AND outcome <> 'accepted' AND outcome <> 'accepted_with_exception';
-- What may miss its first date, or did, by what is read of it: it is counted from here alone.
CREATE INDEX order_state_missed ON order_state (due_date, order_number, promised_date, status)
    WHERE status <> 'cancelled' AND (status = 'open' OR promised_date <> due_date);
CREATE INDEX order_state_waiting_on ON order_state (waiting_on, due_date, order_number)
    WHERE waiting_on <> '';
CREATE INDEX order_state_paper ON order_state (due_date, order_number) WHERE paper = 1;
CREATE INDEX order_state_away ON order_state (due_date, order_number) WHERE away = 1;
CREATE INDEX order_state_conflict ON order_state (due_date, order_number) WHERE conflict = 1;
-- Everything that the report over all accepted orders reads, so that it reads no row.
CREATE INDEX order_state_accepted
    ON order_state (accepted_on, office, installer, cable, variant, visits, order_type)
    WHERE accepted_on <> '' AND order_type <> 'repair';
-- Open hazards stand before everything else.
CREATE INDEX order_state_hazard ON order_state (due_date, order_number)
    WHERE hazard = 1 AND stage <> 'done';

-- How many orders there are of each combination of what the board filters by, due dates apart; kept
-- by the triggers below, so that no count reads the orders.
CREATE TABLE board_tally (
    id INTEGER PRIMARY KEY,
    status TEXT NOT NULL,
    stage TEXT NOT NULL,
    outcome TEXT NOT NULL,
    criterion TEXT NOT NULL,
    office TEXT NOT NULL,
    installer TEXT NOT NULL,
    waiting_on TEXT NOT NULL,
    paper INTEGER NOT NULL,
    hazard INTEGER NOT NULL,
    away INTEGER NOT NULL,
    conflict INTEGER NOT NULL,
    orders INTEGER NOT NULL CHECK (orders >= 0),
    UNIQUE (status, stage, outcome, criterion, office, installer, waiting_on, paper, hazard,
            away, conflict)
) STRICT;
-- How many orders one value of a filter has, asked before each page. They change with a new
-- combination, not with each order.
CREATE INDEX board_tally_stage ON board_tally (stage);
CREATE INDEX board_tally_outcome ON board_tally (outcome);
CREATE INDEX board_tally_criterion ON board_tally (criterion);
CREATE INDEX board_tally_office ON board_tally (office);
CREATE INDEX board_tally_installer ON board_tally (installer);
CREATE INDEX board_tally_waiting_on ON board_tally (waiting_on) WHERE waiting_on <> '';
CREATE INDEX board_tally_paper ON board_tally (paper) WHERE paper = 1;
CREATE INDEX board_tally_hazard ON board_tally (hazard) WHERE hazard = 1;
CREATE INDEX board_tally_away ON board_tally (away) WHERE away = 1;
CREATE INDEX board_tally_conflict ON board_tally (conflict) WHERE conflict = 1;

-- Orders that read a hazard, or say how one was closed, by the pair as letters and digits alone:
-- whoever works on the pair or at the premises is told.
CREATE TABLE hazard_order (
    id INTEGER PRIMARY KEY,
    pair TEXT NOT NULL, -- empty where none is known
    office TEXT NOT NULL,
    service_order INTEGER NOT NULL REFERENCES service_order (id),
    UNIQUE (office, pair, service_order)
) STRICT;
CREATE INDEX hazard_order_order ON hazard_order (service_order);

-- What an office told a van of hazards in orders that the van may not have: the van works at their
-- pairs and premises too.
CREATE TABLE told_hazard (
    id INTEGER PRIMARY KEY,
    order_number TEXT NOT NULL,
    pair TEXT NOT NULL, -- as hazard_order has it
    office TEXT NOT NULL,
    premises_key TEXT NOT NULL,
    events INTEGER NOT NULL, -- of the circuit's chain when it was told
    content TEXT NOT NULL CHECK (json_valid(content)),
    UNIQUE (order_number, pair)
) STRICT;
CREATE INDEX told_hazard_pair ON told_hazard (pair, office);
CREATE INDEX told_hazard_premises ON told_hazard (premises_key) WHERE premises_key <> '';

-- Drafts --------------------------------------------------------------------------------------

CREATE TABLE draft (
    order_number TEXT NOT NULL, -- empty while an order is being typed that has no number yet
    part TEXT NOT NULL CHECK (part <> ''),
    content TEXT NOT NULL CHECK (json_valid(content)),
    PRIMARY KEY (order_number, part)
) STRICT, WITHOUT ROWID;
CREATE INDEX draft_part ON draft (part);

-- An issue that is in the records and whose paper was not written yet, as far as they know.
CREATE TABLE paper_due (
    certificate_issue INTEGER PRIMARY KEY REFERENCES certificate_issue (id)
) STRICT;

-- Add-only ------------------------------------------------------------------------------------

CREATE TRIGGER calibration_no_update BEFORE UPDATE ON calibration
BEGIN SELECT RAISE(ABORT, 'calibrations are only added'); END;
CREATE TRIGGER calibration_no_delete BEFORE DELETE ON calibration
BEGIN SELECT RAISE(ABORT, 'calibrations are only added'); END;
CREATE TRIGGER public_key_no_update BEFORE UPDATE ON public_key
BEGIN SELECT RAISE(ABORT, 'keys are only added'); END;
CREATE TRIGGER public_key_no_delete BEFORE DELETE ON public_key
BEGIN SELECT RAISE(ABORT, 'keys are only added'); END;
CREATE TRIGGER fact_no_update BEFORE UPDATE ON fact
BEGIN SELECT RAISE(ABORT, 'facts are only added'); END;
CREATE TRIGGER fact_no_delete BEFORE DELETE ON fact
BEGIN SELECT RAISE(ABORT, 'facts are only added'); END;
CREATE TRIGGER limit_set_no_update BEFORE UPDATE ON limit_set
BEGIN SELECT RAISE(ABORT, 'limit sets are only added'); END;
CREATE TRIGGER limit_set_no_delete BEFORE DELETE ON limit_set
BEGIN SELECT RAISE(ABORT, 'limit sets are only added'); END;
CREATE TRIGGER decision_no_update BEFORE UPDATE ON decision
BEGIN SELECT RAISE(ABORT, 'decisions are only added'); END;
CREATE TRIGGER decision_no_delete BEFORE DELETE ON decision
BEGIN SELECT RAISE(ABORT, 'decisions are only added'); END;
CREATE TRIGGER certificate_no_update BEFORE UPDATE ON certificate
BEGIN SELECT RAISE(ABORT, 'certificates are only added'); END;
CREATE TRIGGER certificate_no_delete BEFORE DELETE ON certificate
BEGIN SELECT RAISE(ABORT, 'certificates are only added'); END;
CREATE TRIGGER certificate_issue_no_update BEFORE UPDATE ON certificate_issue
BEGIN SELECT RAISE(ABORT, 'certificate issues are only added'); END;
CREATE TRIGGER certificate_issue_no_delete BEFORE DELETE ON certificate_issue
BEGIN SELECT RAISE(ABORT, 'certificate issues are only added'); END;
CREATE TRIGGER event_no_update BEFORE UPDATE ON event
BEGIN SELECT RAISE(ABORT, 'events are only added'); END;
CREATE TRIGGER event_no_delete BEFORE DELETE ON event
BEGIN SELECT RAISE(ABORT, 'events are only added'); END;
CREATE TRIGGER bundle_no_update BEFORE UPDATE ON bundle
BEGIN SELECT RAISE(ABORT, 'bundles are only added'); END;
CREATE TRIGGER bundle_no_delete BEFORE DELETE ON bundle
BEGIN SELECT RAISE(ABORT, 'bundles are only added'); END;
CREATE TRIGGER foreign_event_no_update BEFORE UPDATE ON foreign_event
BEGIN SELECT RAISE(ABORT, 'events of other stations are only added'); END;
CREATE TRIGGER foreign_event_no_delete BEFORE DELETE ON foreign_event
BEGIN SELECT RAISE(ABORT, 'events of other stations are only added'); END;
CREATE TRIGGER foreign_fact_no_update BEFORE UPDATE ON foreign_fact
BEGIN SELECT RAISE(ABORT, 'origins of facts are only added'); END;
CREATE TRIGGER foreign_fact_no_delete BEFORE DELETE ON foreign_fact
BEGIN SELECT RAISE(ABORT, 'origins of facts are only added'); END;
CREATE TRIGGER conflict_no_update
BEFORE UPDATE OF id, conflict, service_order, code, station, content, at_utc, at_offset ON conflict
BEGIN SELECT RAISE(ABORT, 'conflicts are only added'); END;
CREATE TRIGGER conflict_no_delete BEFORE DELETE ON conflict
BEGIN SELECT RAISE(ABORT, 'conflicts are only added'); END;
CREATE TRIGGER settlement_no_update BEFORE UPDATE ON settlement
BEGIN SELECT RAISE(ABORT, 'settlements are only added'); END;
CREATE TRIGGER settlement_no_delete BEFORE DELETE ON settlement
BEGIN SELECT RAISE(ABORT, 'settlements are only added'); END;

-- An order is cancelled, never removed.
CREATE TRIGGER service_order_no_delete BEFORE DELETE ON service_order
BEGIN SELECT RAISE(ABORT, 'orders are not removed'); END;
CREATE TRIGGER circuit_no_delete BEFORE DELETE ON circuit
BEGIN SELECT RAISE(ABORT, 'circuits are not removed'); END;

-- What the board counts ------------------------------------------------------------------------

CREATE TRIGGER board_tally_insert AFTER INSERT ON order_state
BEGIN
    INSERT INTO board_tally (status, stage, outcome, criterion, office, installer, waiting_on,
                             paper, hazard, away, conflict, orders)
    VALUES (NEW.status, NEW.stage, NEW.outcome, NEW.criterion, NEW.office, NEW.installer,
            NEW.waiting_on, NEW.paper, NEW.hazard, NEW.away, NEW.conflict, 1)
    ON CONFLICT (status, stage, outcome, criterion, office, installer, waiting_on, paper, hazard,
                 away, conflict)
        DO UPDATE SET orders = orders + 1;
END;
CREATE TRIGGER board_tally_update
AFTER UPDATE OF status, stage, outcome, criterion, office, installer, waiting_on, paper, hazard, away,
    conflict ON order_state
WHEN NEW.status <> OLD.status OR NEW.stage <> OLD.stage OR NEW.outcome <> OLD.outcome OR
    NEW.criterion <> OLD.criterion OR NEW.office <> OLD.office OR NEW.installer <> OLD.installer
    OR NEW.waiting_on <> OLD.waiting_on OR NEW.paper <> OLD.paper OR NEW.hazard <> OLD.hazard
    OR NEW.away <> OLD.away OR NEW.conflict <> OLD.conflict
BEGIN
    UPDATE board_tally SET orders = orders - 1
    WHERE status = OLD.status AND stage = OLD.stage AND outcome = OLD.outcome
        AND criterion = OLD.criterion AND office = OLD.office AND installer = OLD.installer
        AND waiting_on = OLD.waiting_on AND paper = OLD.paper AND hazard = OLD.hazard
        AND away = OLD.away AND conflict = OLD.conflict;
    DELETE FROM board_tally
    WHERE status = OLD.status AND stage = OLD.stage AND outcome = OLD.outcome
        AND criterion = OLD.criterion AND office = OLD.office AND installer = OLD.installer
        AND waiting_on = OLD.waiting_on AND paper = OLD.paper AND hazard = OLD.hazard
        AND away = OLD.away AND conflict = OLD.conflict
        AND orders = 0;
    INSERT INTO board_tally (status, stage, outcome, criterion, office, installer, waiting_on,
                             paper, hazard, away, conflict, orders)
    VALUES (NEW.status, NEW.stage, NEW.outcome, NEW.criterion, NEW.office, NEW.installer,
            NEW.waiting_on, NEW.paper, NEW.hazard, NEW.away, NEW.conflict, 1)
    ON CONFLICT (status, stage, outcome, criterion, office, installer, waiting_on, paper, hazard,
                 away, conflict)
        DO UPDATE SET orders = orders + 1;
END;
CREATE TRIGGER board_tally_delete AFTER DELETE ON order_state
BEGIN
    UPDATE board_tally SET orders = orders - 1
    WHERE status = OLD.status AND stage = OLD.stage AND outcome = OLD.outcome
        AND criterion = OLD.criterion AND office = OLD.office AND installer = OLD.installer
        AND waiting_on = OLD.waiting_on AND paper = OLD.paper AND hazard = OLD.hazard
        AND away = OLD.away AND conflict = OLD.conflict;
    DELETE FROM board_tally
    WHERE status = OLD.status AND stage = OLD.stage AND outcome = OLD.outcome
        AND criterion = OLD.criterion AND office = OLD.office AND installer = OLD.installer
        AND waiting_on = OLD.waiting_on AND paper = OLD.paper AND hazard = OLD.hazard
        AND away = OLD.away AND conflict = OLD.conflict
        AND orders = 0;
END;

-- Search --------------------------------------------------------------------------------------

-- Only SQLite has this: any part of three or more characters of the search text. Short search terms
-- read the text itself.
CREATE VIRTUAL TABLE order_search USING fts5(
    search, content = 'order_state', content_rowid = 'service_order', tokenize = 'trigram');
CREATE TRIGGER order_state_insert AFTER INSERT ON order_state
BEGIN
    INSERT INTO order_search (rowid, search) VALUES (NEW.service_order, NEW.search);
END;
CREATE TRIGGER order_state_search AFTER UPDATE OF search ON order_state
WHEN NEW.search <> OLD.search
BEGIN
    INSERT INTO order_search (order_search, rowid, search)
    VALUES ('delete', OLD.service_order, OLD.search);
    INSERT INTO order_search (rowid, search) VALUES (NEW.service_order, NEW.search);
END;
CREATE TRIGGER order_state_delete AFTER DELETE ON order_state
BEGIN
    INSERT INTO order_search (order_search, rowid, search)
    VALUES ('delete', OLD.service_order, OLD.search);
END;
