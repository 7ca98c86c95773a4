package terminal

import (
	"bufio"
	"context"
	"fmt"
	"io"
	"strings"
	"time"

	"github.com/google/uuid"

	"heft/bot"
)

// Taker answers an event and logs it.
type Taker interface {
	Take(context.Context, bot.Event) (bot.Reply, error)
}

// Recorder learns what became of a reply.
type Recorder interface {
	Delivered(ctx context.Context, ev bot.Event, at time.Time, failure error)
}

// Desk is one person at one terminal.
type Desk struct {
	Taker  Taker
	User   string
	Units  bot.Units
	JSON   bool // replies as one object a line
	Prompt string
	Now    func() time.Time
	Out    io.Writer
	Keep   func(bot.Reply) error // what else becomes of a reply; may be nil
}

// longest is the longest line that is read as one message; the rest of a
// longer one is the next message.
const longest = 1 << 20

// Ask answers one question and says what became of it.
func (d *Desk) Ask(ctx context.Context, thread, text string) (bot.Status, error) {
	ev := bot.Event{
		ID: uuid.NewString(), Workspace: "local", Channel: "terminal", Thread: thread,
		User: d.User, Text: text, At: d.Now(), Units: d.Units,
	}
	reply, err := d.Taker.Take(ctx, ev)
	if err != nil {
		return "", fmt.Errorf("answer: %w", err)
	}
	_, err = fmt.Fprintln(d.Out, d.render(reply))
	if r, ok := d.Taker.(Recorder); ok {
		r.Delivered(ctx, ev, d.Now(), err)
	}
	if err != nil {
		return "", fmt.Errorf("print the answer: %w", err)
	}
	if d.Keep != nil {
		if err := d.Keep(reply); err != nil {
			return "", err
		}
	}
	return reply.Status(), nil
}

func (d *Desk) render(r bot.Reply) string {
	if d.JSON {
		return string(r.JSON())
	}
	return r.Text()
}

// Chat answers one message a line until the input ends, as one conversation.
func (d *Desk) Chat(ctx context.Context, in io.Reader) error {
	thread := uuid.NewString()
	lines := bufio.NewScanner(in)
	lines.Buffer(make([]byte, 0, 4096), longest)
	for {
		if _, err := io.WriteString(d.Out, d.Prompt); err != nil {
			return fmt.Errorf("print the prompt: %w", err)
		}
		if ctx.Err() != nil || !lines.Scan() {
			break
		}
		if strings.TrimSpace(lines.Text()) == "" {
			continue
		}
		if _, err := d.Ask(ctx, thread, lines.Text()); err != nil {
			return err
		}
	}
	if err := lines.Err(); err != nil {
		return fmt.Errorf("read the messages: %w", err)
	}
	return nil
}
