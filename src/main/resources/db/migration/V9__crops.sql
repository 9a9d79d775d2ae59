-- The cassette of a picture by itself, sealed under a key of its own so that it may outlive its message. Where the key is null it is forgotten, and the row goes
-- once the sealed bytes are taken away. The shape is sizes and places of lines, nothing of a person.
CREATE TABLE crops (
    id ${identity},
    message BIGINT NOT NULL REFERENCES messages (id),
    path TEXT NOT NULL,
    cassette INTEGER NOT NULL,
    shape TEXT NOT NULL,
    wrapped_key ${bytes},
    wrapped_salt ${bytes},
    blob TEXT NOT NULL,
    salted_hash TEXT NOT NULL,
    UNIQUE (message, path, cassette)
);
