package journal

import (
	"database/sql"
	"encoding/json"
	"time"

	"heft/bot"
)

const columns = `workspace, event_id, asked, channel, thread, asker, words, status, intent,
	question, result, reply, plan_kg, calc, schema, delivered, failure, message, posted`

// selectSQL reads entries with what confirms them.
const selectSQL = `SELECT ` + columns + `, confirmer, confirmed, note
	FROM question LEFT JOIN confirmation USING (workspace, event_id)`

const (
	insertSQL = `INSERT INTO question (` + columns + `)
	VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
	ON CONFLICT (workspace, event_id) DO NOTHING`

	// A reply that was posted stays posted, whatever a later try reports.
	deliverSQL = `UPDATE question SET delivered = coalesce(delivered, ?), failure = ?,
	posted = coalesce(nullif(?, ''), posted) WHERE workspace = ? AND event_id = ?`

	// One for an event that the journal does not hold is dropped.
	confirmSQL = `INSERT INTO confirmation (workspace, event_id, confirmer, confirmed, note)
	SELECT workspace, event_id, ?, ?, ? FROM question WHERE workspace = ? AND event_id = ?
	ON CONFLICT (workspace, event_id) DO NOTHING`

	findSQL = selectSQL + ` WHERE workspace = ? AND event_id = ?`

	// The last few days are read in the order of their time; no index of its
	// own is kept for something so rare.
	aboutSQL = selectSQL + `
	WHERE asked >= ? AND workspace = ? AND channel = ? AND ? IN (message, posted) ORDER BY id DESC LIMIT 1`

	conversationSQL = selectSQL + `
	WHERE asked >= ? AND workspace = ? AND channel = ? AND (thread = ? OR ?) ORDER BY asked, id`

	jobSQL = selectSQL + `
	WHERE workspace = ? AND channel = ? AND intent = 'job' AND status = 'answered' ORDER BY id DESC LIMIT 1`

	betweenSQL = selectSQL + ` WHERE asked >= ? AND asked < ?
	ORDER BY asked, id`

	undeliveredSQL = selectSQL + ` WHERE asked >= ? AND delivered IS NULL
	ORDER BY asked, id`
)

// values are an entry's columns in their order.
func values(e bot.Entry) []any {
	return []any{
		e.Workspace, e.ID, e.Asked.UnixMicro(), e.Channel, e.Thread, e.User, e.Words,
		string(e.Status), e.Intent, text(e.Question), text(e.Result), e.Reply, e.PlanKg,
		e.Calc, int64(e.Schema), micros(e.Delivered), e.Failure, e.Message, e.Posted,
	}
}

// scan reads an entry back; its times are UTC, whole microseconds.
func scan(row interface{ Scan(...any) error }) (bot.Entry, error) {
	var (
		e         bot.Entry
		asked     int64
		delivered sql.NullInt64
		confirmer sql.NullString
		confirmed sql.NullInt64
		note      sql.NullString
	)
	err := row.Scan(&e.Workspace, &e.ID, &asked, &e.Channel, &e.Thread, &e.User, &e.Words,
		&e.Status, &e.Intent, (*[]byte)(&e.Question), (*[]byte)(&e.Result), &e.Reply, &e.PlanKg,
		&e.Calc, &e.Schema, &delivered, &e.Failure, &e.Message, &e.Posted, &confirmer, &confirmed, &note)
	e.Asked = time.UnixMicro(asked).UTC()
	if delivered.Valid {
		at := time.UnixMicro(delivered.Int64).UTC()
		e.Delivered = &at
	}
	if confirmer.Valid {
		e.Confirmed = &bot.Confirmation{
			Workspace: e.Workspace, ID: e.ID, User: confirmer.String, At: time.UnixMicro(confirmed.Int64).UTC(), Note: note.String,
		}
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
