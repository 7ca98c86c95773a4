package journal

import (
	"database/sql"
	"encoding/json"
	"time"

	"heft/bot"
)

const columns = `workspace, event_id, asked, channel, thread, asker, words, status, intent,
	question, result, reply, plan_kg, calc, schema, delivered, failure`

const (
	insertSQL = `INSERT INTO question (` + columns + `)
	VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
	ON CONFLICT (workspace, event_id) DO NOTHING`

	// A reply that was posted stays posted, whatever a later try reports.
	deliverSQL = `UPDATE question SET delivered = coalesce(delivered, ?), failure = ?
	WHERE workspace = ? AND event_id = ?`

	findSQL = `SELECT ` + columns + ` FROM question WHERE workspace = ? AND event_id = ?`

	conversationSQL = `SELECT ` + columns + ` FROM question
	WHERE asked >= ? AND workspace = ? AND channel = ? AND (thread = ? OR ?) ORDER BY asked, id`

	jobSQL = `SELECT ` + columns + ` FROM question
	WHERE workspace = ? AND channel = ? AND intent = 'job' AND status = 'answered' ORDER BY id DESC LIMIT 1`

	betweenSQL = `SELECT ` + columns + ` FROM question WHERE asked >= ? AND asked < ?
	ORDER BY asked, id`

	undeliveredSQL = `SELECT ` + columns + ` FROM question WHERE asked >= ? AND delivered IS NULL
	ORDER BY asked, id`
)

// values are an entry's columns in their order.
func values(e bot.Entry) []any {
	return []any{
		e.Workspace, e.ID, e.Asked.UnixMicro(), e.Channel, e.Thread, e.User, e.Words,
		string(e.Status), e.Intent, text(e.Question), text(e.Result), e.Reply, e.PlanKg,
		e.Calc, int64(e.Schema), micros(e.Delivered), e.Failure,
	}
}

// scan reads an entry back; its times are UTC, whole microseconds.
func scan(row interface{ Scan(...any) error }) (bot.Entry, error) {
	var (
		e         bot.Entry
		asked     int64
		delivered sql.NullInt64
	)
	err := row.Scan(&e.Workspace, &e.ID, &asked, &e.Channel, &e.Thread, &e.User, &e.Words,
		&e.Status, &e.Intent, (*[]byte)(&e.Question), (*[]byte)(&e.Result), &e.Reply, &e.PlanKg,
		&e.Calc, &e.Schema, &delivered, &e.Failure)
	e.Asked = time.UnixMicro(asked).UTC()
	if delivered.Valid {
		at := time.UnixMicro(delivered.Int64).UTC()
		e.Delivered = &at
	}
	return e, err
}

func text(raw json.RawMessage) any {
	if raw == nil {
		return nil
	}
	return string(raw)
}

func micros(t *time.Time) any {
	if t == nil {
		return nil
	}
	return t.UnixMicro()
}
