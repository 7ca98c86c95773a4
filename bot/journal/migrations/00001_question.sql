-- +goose Up
CREATE TABLE question (
    id        INTEGER PRIMARY KEY,
    workspace TEXT    NOT NULL,
    event_id  TEXT    NOT NULL CHECK (event_id <> ''),
    asked     INTEGER NOT NULL, -- microseconds since 1970, UTC
    channel   TEXT    NOT NULL,
    thread    TEXT    NOT NULL,
    asker     TEXT    NOT NULL,
    words     TEXT    NOT NULL,
    status    TEXT    NOT NULL,
    intent    TEXT    NOT NULL,
    question  TEXT,             -- JSON
    result    TEXT,             -- JSON
    reply     TEXT    NOT NULL,
    plan_kg   REAL    NOT NULL CHECK (plan_kg >= 0 AND plan_kg < 9e999),
    calc      TEXT    NOT NULL,
    schema    INTEGER NOT NULL,
    delivered INTEGER,          -- microseconds since 1970, UTC
    failure   TEXT    NOT NULL,
    UNIQUE (workspace, event_id)
) STRICT;
