package bot

import (
	"context"
	"encoding/json"
	"errors"
	"maps"
	"reflect"
	"slices"
	"time"
)

// Edited finds what the message of an event asked before somebody edited it,
// so that its answer is edited too. A message that asked nothing before is a
// question like any other. ErrRepeated means that its words are the same. An
// answer that somebody stands by on site stays as it is: the new one is
// posted beside it.
func (c *Clerk) Edited(ctx context.Context, ev Event) (Event, error) {
	e, err := c.Journal.About(ctx, ev.Workspace, ev.Channel, ev.Message, ev.At.Add(-talkFor))
	switch {
	case errors.Is(err, ErrNotLogged):
		return ev, nil
	case err != nil:
		return ev, err
	case e.Words == ev.Text && e.ID != ev.ID:
		return ev, ErrRepeated
	}
	ev.was, ev.Thread = &e, e.Thread
	if e.Confirmed == nil {
		ev.Shown = e.Posted
	}
	return ev, nil
}

// beforeEdit is the turn that an edited message leans on: what was said
// before its first wording.
func (c *Clerk) beforeEdit(ctx context.Context, ev Event) (Turn, error) {
	said, err := c.Journal.Conversation(ctx, ev, ev.At.Add(-talkFor))
	if err != nil {
		return Turn{}, err
	}
	said = lastWording(said)
	if at := slices.IndexFunc(said, func(e Entry) bool { return e.Message == ev.Message }); at >= 0 {
		said = said[:at]
	}
	return c.rebuilt(ctx, ev, said), nil
}

// retold is the turn of a conversation after an edit: what was said behind
// the edited message still holds.
func (c *Clerk) retold(ctx context.Context, ev Event, turn Turn) Turn {
	if ev.was == nil {
		return turn
	}
	said, err := c.Journal.Conversation(ctx, ev, ev.At.Add(-talkFor))
	if err != nil {
		c.Log.ErrorContext(ctx, "a conversation was not rebuilt", KeyEvent, ev.ID, KeyErr, err)
		return turn
	}
	return c.rebuilt(ctx, ev, said)
}

// lastWording puts the last words of an edited message in the place of its
// first.
func lastWording(said []Entry) []Entry {
	at := map[string]int{}
	var out []Entry
	for _, e := range said {
		i, known := at[e.Message]
		if known && e.Message != "" {
			out[i].Words = e.Words
			continue
		}
		at[e.Message] = len(out)
		out = append(out, e)
	}
	return out
}

// tooOld is how old a question may be before its answer says so.
const tooOld = 2 * time.Minute

// aside adds to a reply what concerns its message and not its figures: that
// it was edited, and that it is old.
func (ev Event) aside(r Reply) Reply {
	var said []string
	if ev.was != nil {
		said = append(said, r.voice.edited(ev.was.Result, r.figures))
	}
	if age := ev.Reached.Sub(ev.At); !ev.Reached.IsZero() && age > tooOld {
		said = append(said, r.voice.say("This question is %s old: check that it still fits.", r.voice.age(age)))
	}
	r.lines = slices.Insert(r.lines, 1, said...)
	return r
}

// age says a time in whole minutes or, past two hours, hours.
func (s speaker) age(d time.Duration) string {
	if d < 2*time.Hour {
		return s.say("%s min", count(int(d/time.Minute)))
	}
	return s.say("%s h", count(int(d/time.Hour)))
}

// edited says what an edit kept and what it changed.
func (s speaker) edited(before, now json.RawMessage) string {
	var was, is struct{ Understood map[string]any }
	_ = json.Unmarshal(before, &was) // our own; where it is torn, all counts as new
	_ = json.Unmarshal(now, &is)
	fields := maps.Clone(was.Understood)
	if fields == nil {
		fields = map[string]any{}
	}
	maps.Copy(fields, is.Understood)
	var kept, changed []string
	for _, f := range slices.Sorted(maps.Keys(fields)) {
		if reflect.DeepEqual(was.Understood[f], is.Understood[f]) {
			kept = append(kept, f)
		} else {
			changed = append(changed, f)
		}
	}
	if said := s.leaning(kept, changed); said != "" {
		return s.say("The question was edited. %s", said)
	}
	return s.word("The question was edited.")
}
