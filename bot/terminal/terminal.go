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

// Ask answers one question by itself and says what became of it.
func (d *Desk) Ask(ctx context.Context, text string) (bot.Status, error) {
	return d.answer(ctx, bot.Event{Thread: "ask", Text: text, Alone: true})
}

// answer takes an event to the desk, prints the reply and says what became of
// the question.
func (d *Desk) answer(ctx context.Context, ev bot.Event) (bot.Status, error) {
	ev.ID, ev.Workspace, ev.Channel = uuid.NewString(), "local", "terminal"
	ev.User, ev.At, ev.Units = d.User, d.Now(), d.Units
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
	thread, opens := uuid.NewString(), true
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
		if _, err := d.answer(ctx, bot.Event{Thread: thread, Text: lines.Text(), Opens: opens}); err != nil {
			return err
		}
		opens = false
	}
	if err := lines.Err(); err != nil {
		return fmt.Errorf("read the messages: %w", err)
	}
	return nil
}
