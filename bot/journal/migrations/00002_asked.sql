-- +goose Up
-- A day's sheet reads that day alone, however many years lie behind it.
CREATE INDEX question_asked ON question (asked);
