-- ${identity} and ${bytes} are the two types in which SQLite and PostgreSQL differ. Times are milliseconds since 1970 (UTC).

CREATE TABLE secrets (
    name TEXT PRIMARY KEY,
    wrapped ${bytes} NOT NULL
);

-- A message as taken. Key and salt are wrapped by the master key; where they are null the message is forgotten.
CREATE TABLE messages (
    id ${identity},
    mark TEXT NOT NULL UNIQUE,
    wrapped_key ${bytes},
    wrapped_salt ${bytes},
    blob TEXT NOT NULL,
    salted_hash TEXT NOT NULL,
    size BIGINT NOT NULL,
    taken BIGINT NOT NULL,
    delivered BIGINT,
    submission BIGINT,
    findings ${bytes},
    inspected BIGINT
);
CREATE INDEX messages_by_submission ON messages (submission);

CREATE TABLE sightings (
    message BIGINT NOT NULL REFERENCES messages (id),
    account TEXT NOT NULL,
    folder TEXT NOT NULL,
    uid_validity BIGINT NOT NULL,
    uid BIGINT NOT NULL,
    seen BIGINT NOT NULL,
    PRIMARY KEY (account, folder, uid_validity, uid)
);
CREATE INDEX sightings_by_message ON sightings (message);

CREATE TABLE blobs (
    name TEXT PRIMARY KEY,
    sealed ${bytes} NOT NULL
);

-- By what messages see one another; value is a test's reference or a keyed mark.
CREATE TABLE links (
    message BIGINT NOT NULL REFERENCES messages (id),
    kind TEXT NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (kind, value, message)
);
CREATE INDEX links_by_message ON links (message);

CREATE TABLE pictures (
    id ${identity},
    message BIGINT NOT NULL REFERENCES messages (id),
    path TEXT NOT NULL,
    fingerprints TEXT NOT NULL,
    UNIQUE (message, path)
);

-- Every version of every test ever imported; the newest is valid while gone is null.
CREATE TABLE tests (
    ref TEXT NOT NULL,
    attempt INTEGER NOT NULL,
    version INTEGER NOT NULL,
    record TEXT NOT NULL,
    imported BIGINT NOT NULL,
    gone BIGINT,
    PRIMARY KEY (ref, attempt, version)
);

CREATE TABLE submissions (
    id BIGINT PRIMARY KEY,
    state TEXT NOT NULL,
    test TEXT,
    urgent INTEGER NOT NULL,
    arrived BIGINT NOT NULL,
    due BIGINT NOT NULL,
    savable BIGINT,
    needed_by BIGINT,
    assessment INTEGER NOT NULL,
    version INTEGER NOT NULL
);
CREATE INDEX submissions_by_state ON submissions (state, due);
CREATE INDEX submissions_by_test ON submissions (test);

CREATE TABLE assessments (
    submission BIGINT NOT NULL,
    number INTEGER NOT NULL,
    made BIGINT NOT NULL,
    rules TEXT NOT NULL,
    messages TEXT NOT NULL,
    outcome TEXT NOT NULL,
    codes TEXT NOT NULL,
    content TEXT NOT NULL,
    PRIMARY KEY (submission, number)
);

CREATE TABLE suggested_replies (
    submission BIGINT NOT NULL,
    assessment INTEGER NOT NULL,
    reply TEXT NOT NULL,
    PRIMARY KEY (submission, assessment)
);

CREATE TABLE judgements (
    id ${identity},
    submission BIGINT NOT NULL,
    assessment INTEGER NOT NULL,
    discrepancy TEXT NOT NULL,
    decision TEXT NOT NULL,
    reason_code TEXT NOT NULL,
    who TEXT NOT NULL,
    made BIGINT NOT NULL
);
CREATE INDEX judgements_by_submission ON judgements (submission);

CREATE TABLE work (
    id ${identity},
    kind TEXT NOT NULL,
    key BIGINT NOT NULL,
    due BIGINT NOT NULL,
    free_from BIGINT NOT NULL,
    tries INTEGER NOT NULL,
    problem TEXT,
    UNIQUE (kind, key)
);
CREATE INDEX work_by_due ON work (due, id);

CREATE TABLE ledger_leaves (
    sequence BIGINT PRIMARY KEY,
    leaf ${bytes} NOT NULL
);
CREATE TABLE ledger_frontier (
    id INTEGER PRIMARY KEY,
    size BIGINT NOT NULL,
    peaks TEXT NOT NULL
);
INSERT INTO ledger_frontier (id, size, peaks) VALUES (1, 0, '');
CREATE TABLE ledger_heads (
    size BIGINT PRIMARY KEY,
    root TEXT NOT NULL,
    signed TEXT NOT NULL,
    key_id TEXT NOT NULL,
    signature TEXT NOT NULL
);

CREATE TABLE users (
    id TEXT PRIMARY KEY,
    display_name TEXT NOT NULL,
    roles TEXT NOT NULL,
    password_hash TEXT NOT NULL,
    active INTEGER NOT NULL
);

CREATE TABLE outages (
    id ${identity},
    starts BIGINT NOT NULL,
    ends BIGINT NOT NULL,
    reason TEXT NOT NULL
);

CREATE TABLE quarantined_lots (
    lot TEXT PRIMARY KEY,
    since BIGINT NOT NULL
);

CREATE TABLE locks (
    name TEXT PRIMARY KEY
);
INSERT INTO locks (name) VALUES ('assessing');
