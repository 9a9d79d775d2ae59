-- Repeats of tests as people record them here; they stand beside the book and outlive its imports.
CREATE TABLE repeats (
    ref TEXT NOT NULL,
    attempt INTEGER NOT NULL,
    record TEXT NOT NULL,
    who TEXT NOT NULL,
    made BIGINT NOT NULL,
    PRIMARY KEY (ref, attempt)
);
