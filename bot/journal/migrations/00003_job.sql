-- +goose Up
-- What holds for a channel is looked up by its first question of a run; the
-- index has only the few rows that tell it.
CREATE INDEX question_job ON question (workspace, channel, id) WHERE intent = 'job' AND status = 'answered';
