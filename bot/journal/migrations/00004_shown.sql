-- +goose Up
-- Which message asked, and which one shows the answer: an edited question
-- gets that one edited, and a supervisor is led there.
ALTER TABLE question ADD COLUMN message TEXT NOT NULL DEFAULT '';
ALTER TABLE question ADD COLUMN posted  TEXT NOT NULL DEFAULT '';
-- Who stood by an answer, on site. The first one stands.
CREATE TABLE confirmation (
    workspace TEXT    NOT NULL,
    event_id  TEXT    NOT NULL,
    confirmer TEXT    NOT NULL CHECK (confirmer <> ''),
    confirmed INTEGER NOT NULL, -- microseconds since 1970, UTC
    note      TEXT    NOT NULL,
    PRIMARY KEY (workspace, event_id),
    FOREIGN KEY (workspace, event_id) REFERENCES question (workspace, event_id)
) STRICT;
