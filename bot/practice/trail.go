package practice

import (
	"slices"
	"sync"
	"time"

	"heft/bot/standin"
)

// step is something a person did that the desk answers them alone, or with a
// form: a ticket asked for oneself, or a button.
type step struct {
	user, channel string
	ts            string // the message of the button
	asked         string
	at            time.Time
}

// trail remembers the newest steps. The workspace shows an answer for one
// person without what it answers, as the platform does; the page shows both.
type trail struct {
	mu    sync.Mutex
	steps []step // oldest first
}

// maxSteps is how many are remembered.
const maxSteps = 500

func (t *trail) add(s step) {
	s.at = time.Now().Truncate(time.Microsecond) // as fine as a message's stamp
	t.mu.Lock()
	defer t.mu.Unlock()
	t.steps = append(t.steps, s)
	if len(t.steps) > maxSteps {
		t.steps = slices.Delete(t.steps, 0, 1)
	}
}

func (t *trail) all() []step {
	t.mu.Lock()
	defer t.mu.Unlock()
	return slices.Clone(t.steps)
}

// did notes a step of the one who acts.
func (p *page) did(a act, s step) {
	s.user, s.channel = a.user, a.channel
	p.trail.add(s)
}

// latest is the role's last step.
func (b *builder) latest() (step, bool) {
	for _, s := range slices.Backward(b.steps) {
		if s.user == b.role.User {
			return s, true
		}
	}
	return step{}, false
}

// cause is the step that a message for one person answers: their last one
// before it at that place.
func (b *builder) cause(m standin.Message) step {
	if m.For == "" {
		return step{}
	}
	for _, s := range slices.Backward(b.steps) {
		if s.user == m.For && s.channel == m.Channel && !s.at.After(moment(m.TS)) {
			return s
		}
	}
	return step{}
}
