package seen

import (
	"reflect"
	"strconv"
	"sync"
	"sync/atomic"
	"testing"
	"testing/synctest"
	"time"

	"heft/bot"
)

// said is the turn that a question leaves behind.
func said(t testing.TB, words string) bot.Turn {
	t.Helper()
	desk, err := bot.NewDesk()
	if err != nil {
		t.Fatal(err)
	}
	_, _, turn := desk.Answer(bot.Event{ID: "Ev1", Text: words}, bot.Turn{})
	if reflect.DeepEqual(turn, bot.Turn{}) {
		t.Fatalf("%q leaves nothing to lean on", words)
	}
	return turn
}

func TestAnIDIsFirstOnce(t *testing.T) {
	m := New()
	for i, step := range []struct {
		id   string
		want bool
	}{
		{"T-ridge/Ev1", true}, {"T-ridge/Ev1", false}, {"T-ridge/Ev2", true}, {"T-valley/Ev1", true}, {"T-ridge/Ev1", false},
	} {
		if got := m.First(step.id); got != step.want {
			t.Errorf("step %d: first %v, want %v", i, got, step.want)
		}
	}
	m.Forget("T-ridge/Ev1")
	if !m.First("T-ridge/Ev1") {
		t.Error("an id given back is not first")
	}
	m.Forget("T-ridge/never-taken")
}

func TestOneOfManyIsFirst(t *testing.T) {
	m := New()
	for i := range 200 {
		var firsts atomic.Int64
		var wg sync.WaitGroup
		for range 8 {
			wg.Go(func() {
				if m.First(strconv.Itoa(i)) {
					firsts.Add(1)
				}
			})
		}
		wg.Wait()
		if n := firsts.Load(); n != 1 {
			t.Fatalf("id %d was first %d times", i, n)
		}
	}
}

// The clock of these tests is the bubble's: it jumps to the end of every sleep, so
// that nobody waits, and nothing is synchronised by one.

func TestAnIDOutlastsEveryRedelivery(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		m := New()
		m.First("Ev1")
		// The platform brings an event again at once, after 1 minute and after
		// 5 (its public documentation).
		for _, pause := range []time.Duration{0, time.Minute, 4 * time.Minute, 10 * time.Minute} {
			time.Sleep(pause)
			if m.First("Ev1") {
				t.Errorf("first again %v after the last look", pause)
			}
		}
		time.Sleep(30 * time.Minute)
		if !m.First("Ev1") {
			t.Error("kept for ever")
		}
	})
}

func TestAConversationIsRecalledForAWorkingDay(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		m, turn := New(), said(t, "14 in red oak limb 22 ft, hitched at 35 ft")
		if _, ok := m.Recall("T/C/1"); ok {
			t.Error("recalled what was never said")
		}
		m.Remember("T/C/1", turn)
		time.Sleep(11 * time.Hour)
		if got, ok := m.Recall("T/C/1"); !ok || !reflect.DeepEqual(got, turn) {
			t.Errorf("after 11 hours: %v, %v", got, ok)
		}
		if _, ok := m.Recall("T/C/2"); ok {
			t.Error("recalled another conversation")
		}
		m.Remember("T/C/1", turn)
		time.Sleep(11 * time.Hour)
		if _, ok := m.Recall("T/C/1"); !ok {
			t.Error("a new turn did not renew the conversation")
		}
		time.Sleep(2 * time.Hour)
		if _, ok := m.Recall("T/C/1"); ok {
			t.Error("recalled for ever")
		}
	})
}

func TestAFullShelfForgetsTheOldest(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		s := newShelf(time.Hour, 100)
		for i := range 1000 {
			s.put(strconv.Itoa(i), i)
			if n := s.cache.ItemCount(); n > 100 {
				t.Fatalf("%d items on a shelf of 100", n)
			}
			time.Sleep(time.Second)
		}
		for i := range 1000 {
			v := s.get(strconv.Itoa(i))
			if i < 900 && v != nil {
				t.Errorf("%d is old and still there", i)
			}
			if i >= 925 && v != i {
				t.Errorf("%d is new and gone: %v", i, v)
			}
		}
	})
}

func TestWhatHasExpiredGoesFirst(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		s := newShelf(time.Hour, 100)
		for i := range 60 {
			s.put("old"+strconv.Itoa(i), i)
		}
		time.Sleep(61 * time.Minute)
		for i := range 60 {
			s.put("new"+strconv.Itoa(i), i)
		}
		for i := range 60 {
			if v := s.get("new" + strconv.Itoa(i)); v != i {
				t.Errorf("new %d is gone: %v", i, v)
			}
		}
	})
}

func TestAFullMemoryIsBounded(t *testing.T) {
	m := New()
	for i := range maxIDs + maxIDs/2 {
		m.First(strconv.Itoa(i))
	}
	if n := m.ids.cache.ItemCount(); n > maxIDs {
		t.Errorf("%d ids, want at most %d", n, maxIDs)
	}
	for i := range 2 * maxTurns {
		m.Remember(strconv.Itoa(i), bot.Turn{})
	}
	if n := m.turns.cache.ItemCount(); n > maxTurns {
		t.Errorf("%d turns, want at most %d", n, maxTurns)
	}
	if m.First(strconv.Itoa(maxIDs + maxIDs/2 - 1)) {
		t.Error("the newest id is forgotten")
	}
}

func TestManyAtOnce(t *testing.T) {
	s := newShelf(time.Hour, 50)
	var wg sync.WaitGroup
	for g := range 8 {
		wg.Go(func() {
			for i := range 500 {
				key := strconv.Itoa(g*1000 + i)
				s.put(key, i)
				s.get(key)
				s.add(key + "x")
				s.drop(key)
			}
		})
	}
	wg.Wait()
	s.put("last", 1)
	if n := s.cache.ItemCount(); n > 50 {
		t.Errorf("%d items on a shelf of 50", n)
	}
}
