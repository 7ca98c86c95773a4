package bot_test

import (
	"errors"
	"slices"
	"strings"
	"testing"
	"time"

	"heft/bot"
)

// talk is one channel of one crew: every message a conversation of its own,
// unless it says otherwise.
type talk struct {
	*bot.Clerk
	t *testing.T
	n int
}

func (k *talk) say(text, thread string) (bot.Reply, object) {
	k.t.Helper()
	k.n++
	ev := bot.Event{
		ID: "Ev" + string(rune('a'+k.n)), Workspace: "T-ridge", Channel: "C-birch", Thread: thread, User: "U-dana",
		Text: text, At: asked.Add(time.Duration(k.n) * time.Minute),
	}
	r, err := k.Take(k.t.Context(), ev)
	if err != nil {
		k.t.Fatal(err)
	}
	return r, decode(k.t, r)
}

func TestAJobHoldsInEveryThreadUntilItIsCleared(t *testing.T) {
	s := &shelf{}
	k := &talk{Clerk: newClerk(t, s), t: t}
	if r, _ := k.say("what's the job?", "1"); !strings.Contains(r.Headline(), "No job") {
		t.Errorf("with none told: %q", r.Headline())
	}
	r, o := k.say("job: limit 600 lb, 3 people, metric, arborist @dana, site 12 Birch Lane", "2")
	for _, want := range []string{"600 lb", "3 people", "metric", "dana", "12 Birch Lane"} {
		if !strings.Contains(r.Headline(), want) {
			t.Errorf("what is kept is not said back: %q lacks %s", r.Headline(), want)
		}
	}
	if o.Intent != "job" || o.Understood["people"] != 3.0 {
		t.Errorf("%s, understood %v", o.Intent, o.Understood)
	}

	// The program starts anew: what it knows is in the journal alone.
	k = &talk{Clerk: newClerk(t, s), t: t, n: 10}
	r, o = k.say("14 in red oak limb, 22 ft", "3")
	if !slices.Contains(o.Kept, "limit_kg") || !strings.Contains(r.Text(), "From the job: limit 600 lb.") || !strings.Contains(r.Headline(), "OVER your limit") {
		t.Errorf("kept %v: %s", o.Kept, r.Text())
	}
	if strings.Contains(r.Headline(), "people") {
		t.Errorf("the people of the job hold no rope that nobody spoke of: %q", r.Headline())
	}
	if r, _ = k.say("how heavy is a red oak limb", "4"); !strings.Contains(r.Headline(), " cm") {
		t.Errorf("house units: %q", r.Headline())
	}
	if _, o = k.say("600 lb limb on a 2:1", "5"); o.Understood["people"] != 3.0 {
		t.Errorf("the job's people haul: %v", o.Understood)
	}

	// What the message says goes before what the job says, and changes nothing
	// for the next.
	if _, o = k.say("14 in red oak limb, 22 ft, limit 3000 lb", "6"); slices.Contains(o.Kept, "limit_kg") {
		t.Errorf("kept %v over what was said", o.Kept)
	}
	r, o = k.say("job: limit 900 lb", "7")
	if !slices.Contains(o.Changed, "limit_kg") || !slices.Contains(o.Kept, "people") || !strings.Contains(r.Headline(), "dana") {
		t.Errorf("changed %v, kept %v: %q", o.Changed, o.Kept, r.Headline())
	}
	// An open thread does not keep the limit of yesterday.
	if _, o = k.say("what about 20 ft", "3"); o.Understood["limit_kg"] != 408.233133 {
		t.Errorf("in an older thread the limit is %v", o.Understood["limit_kg"])
	}
	if r, _ = k.say("clear the job", "8"); !strings.Contains(r.Headline(), "cleared") {
		t.Errorf("%q", r.Headline())
	}
	if _, o = k.say("14 in red oak limb, 22 ft", "9"); o.Understood["limit_kg"] != nil {
		t.Errorf("a limit after the job is cleared: %v", o.Understood)
	}
}

func TestAJobTakesNoPiece(t *testing.T) {
	s := &shelf{}
	k := &talk{Clerk: newClerk(t, s), t: t}
	k.say("job: limit 600 lb, 60 m of rope", "1")
	for _, text := range []string{"job: 14 in red oak limb, limit 900 lb", "job: red oak limb 22 ft"} {
		if r, _ := k.say(text, "2"); r.Status() != bot.Refused {
			t.Errorf("%q: %s", text, r.Text())
		}
	}
	r, _ := k.say("job: limit 700", "3")
	if r.Status() != bot.Needs || len(r.Choices()) != 2 {
		t.Fatalf("a limit of no unit: %s, choices %v", r.Text(), r.Choices())
	}
	if _, o := k.say("what is the job", "4"); o.Understood["limit_kg"] != 272.155422 {
		t.Errorf("the job is as it was: %v", o.Understood)
	}
	if _, o := k.say("2", "3"); o.Understood["limit_kg"] != 700.0 {
		t.Errorf("the second choice is 700 kg: %v", o.Understood)
	}
}

// Where nobody can look the job up, nobody is told that there is none.
func TestNoFigureWithoutTheJob(t *testing.T) {
	s := &shelf{err: errors.New("disk gone")}
	k := &talk{Clerk: newClerk(t, s), t: t}
	if r, _ := k.say("14 in red oak limb, 22 ft", "1"); r.Status() != bot.Refused || strings.Contains(r.Text(), "lb") {
		t.Errorf("%s", r.Text())
	}
}

// After a restart a thread goes on where it was.
func TestAConversationIsRebuiltFromTheJournal(t *testing.T) {
	s := &shelf{}
	k := &talk{Clerk: newClerk(t, s), t: t}
	k.say("14 in red oak limb, 22 ft, hitched at 35 ft", "1")
	k.say("what about 16 ft", "1")
	k.say("maple log 20 in", "2")
	want, _ := k.say("same but white ash", "1")

	k = &talk{Clerk: newClerk(t, &shelf{entries: s.entries[:3]}), t: t, n: 3}
	got, o := k.say("same but white ash", "1")
	if got.Text() != want.Text() {
		t.Errorf("after the restart:\n%s\nwithout it:\n%s", got.Text(), want.Text())
	}
	if o.Understood["length_m"] != 4.8768 {
		t.Errorf("understood %v", o.Understood)
	}
	if r, _ := k.say("3", "2"); r.Status() != bot.Needs || !strings.Contains(r.Text(), "sugar maple") {
		t.Errorf("a choice of the earlier run: %s", r.Text())
	}
}

func TestALaterDayIsAnotherConversation(t *testing.T) {
	s := &shelf{}
	k := &talk{Clerk: newClerk(t, s), t: t}
	k.say("14 in red oak limb, 22 ft", "1")
	k = &talk{Clerk: newClerk(t, s), t: t, n: 13 * 60}
	if r, _ := k.say("what about 16 ft", "1"); r.Status() != bot.Needs {
		t.Errorf("thirteen hours later: %s", r.Text())
	}
}

func TestAChoiceIsTheQuestionWithItsDoubtTakenOut(t *testing.T) {
	for question, want := range map[string][]string{
		"red oak limb 14, 22 ft":                {"red oak limb 14 in, 22 ft", "red oak limb 14 ft, 22 ft"},
		"limit 700, red oak limb":               {"limit 700 lb, red oak limb", "limit 700 kg, red oak limb"},
		"600 lb limb 30 degrees":                {"600 lb limb 30 degrees between the legs", "600 lb limb rope turns 30 degrees"},
		"600 lb limb, hitch 70":                 nil,
		"600 lb limb, hitch 25":                 {"600 lb limb, hitch 25 ft", "600 lb limb, hitch 25 m"},
		"linden 300 2 m how many wraps":         {"linden 300 mm across 2 m how many wraps", "linden 300 kg 2 m how many wraps"},
		"red oak limb 14 across":                {"red oak limb 14 in across", "red oak limb 14 cm across"},
		"lift 800 on a 3:1":                     {"lift 800 lb on a 3:1", "lift 800 kg on a 3:1"},
		"14 in blorf red oak limb 22 ft":        {"14 in   red oak limb 22 ft"},
		"300 kg ash limb, hitched at 35":        {"300 kg ash limb, hitched at 35 ft", "300 kg ash limb, hitched at 35 m"},
		"limb of 2 tons":                        {"limb of 4000 lb", "limb of 4480 lb", "limb of 2000 kg"},
		"14 in red oak limb 22 ft":              nil,
		"14 in red oak limb":                    nil,
		"power line, 14 red oak limb":           nil,
		"14 in red oak limb 22 ft 7 at the end": nil,
	} {
		r, _, _ := newDesk(t).Answer(event(question), bot.Turn{})
		var got []string
		for _, c := range r.Choices() {
			got = append(got, c.Message)
		}
		if want == nil && r.Status() == bot.Needs && strings.HasPrefix(r.Headline(), "Which") {
			continue
		}
		if !slices.Equal(got, want) {
			t.Errorf("%q offers %q, want %q (%s)", question, got, want, r.Headline())
		}
	}
}

func TestTheLastAnswerIsExplained(t *testing.T) {
	d := newDesk(t)
	_, _, turn := d.Answer(event("14 in red oak limb 22 ft, hitched at 35 ft"), bot.Turn{})
	for text, want := range map[string][]string{
		"why?":                 {"lb/ft³", "e^(−2π", "Top block: 2 ×", "Rope: 2 × 35 ft"},
		"show the numbers":     {"ft³"},
		"what did you assume?": {"Taken for granted", "over bark", "tree to tree"},
	} {
		r, e, after := d.Answer(event(text), turn)
		for _, w := range want {
			if !strings.Contains(r.Text(), w) {
				t.Errorf("%q: %s\nlacks %q", text, r.Text(), w)
			}
		}
		if e.Intent != "lower" || r.Status() != bot.Answered {
			t.Errorf("%q is %s, %s", text, e.Intent, r.Status())
		}
		if follow, _, _ := d.Answer(event("what about 16 ft"), after); !strings.Contains(follow.Headline(), "16 ft") {
			t.Errorf("after %q the talk goes on: %q", text, follow.Headline())
		}
	}
	if r, _, _ := d.Answer(event("why is a 12 in red oak limb 20 ft so heavy"), turn); !strings.Contains(r.Headline(), "12 in butt × 20 ft: plan on") || !strings.Contains(r.Text(), "lb/ft³") {
		t.Errorf("a question of its own: %s", r.Text())
	}
	if r, _, _ := d.Answer(event("why?"), bot.Turn{}); r.Status() == bot.Answered && !strings.Contains(r.Headline(), "Ready") {
		t.Errorf("with nothing to explain: %s", r.Text())
	}
}

// An explanation is of the piece before, and no piece of its own.
func TestAnExplanationIsNoPiece(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	for _, text := range []string{"14 in red oak limb, 22 ft", "why?", "what did you assume?", "600 lb log"} {
		k.say(text, "1")
	}
	if r, o := k.say("total so far?", "1"); o.Tree == nil || o.Tree.Pieces != 2 {
		t.Errorf("%s", r.Text())
	}
}

// TestNobodyMakesThemselvesTheArborist: where somebody supervises, the one who
// may confirm is named by others, and once named hands it on alone.
func TestNobodyMakesThemselvesTheArborist(t *testing.T) {
	c := newClerk(t, &shelf{})
	c.Supervisors = []string{"U0BOSS"}
	n := 0
	for _, m := range []struct {
		user, text string
		status     bot.Status
		arborist   string // who it is then
	}{
		{"U0ROSA", "job: limit 600 lb, arborist @U0ROSA", bot.Refused, ""},
		{"U0ROSA", "job: limit 600 lb", bot.Answered, ""},
		{"U0ROSA", "job: arborist @U0INGE", bot.Answered, "U0INGE"},
		{"U0ROSA", "job: arborist @U0ROSA", bot.Refused, "U0INGE"},
		{"U0ROSA", "job: arborist @U0OTHER, limit 800 lb", bot.Refused, "U0INGE"},
		{"U0ROSA", "clear the job", bot.Refused, "U0INGE"},
		{"U0ROSA", "job: limit 700 lb", bot.Answered, "U0INGE"},
		{"U0INGE", "job: arborist @U0OTHER", bot.Answered, "U0OTHER"},
		{"U0BOSS", "job: arborist @U0BOSS", bot.Answered, "U0BOSS"},
		{"U0BOSS", "clear the job", bot.Answered, ""},
	} {
		n++
		ev := bot.Event{ID: string(rune('a' + n)), Workspace: "T1", Channel: "C1", Thread: string(rune('a' + n)), User: m.user, Text: m.text, At: asked.Add(time.Duration(n) * time.Minute)}
		r, err := c.Take(t.Context(), ev)
		if err != nil {
			t.Fatal(err)
		}
		if o := decode(t, r); o.Status != string(m.status) {
			t.Errorf("%s: %q is %s, want %s: %s", m.user, m.text, o.Status, m.status, r.Text())
		}
		if job, _ := c.Memory.Job("T1/C1"); job.Arborist() != m.arborist {
			t.Errorf("after %s: %q the arborist is %q, want %q", m.user, m.text, job.Arborist(), m.arborist)
		}
	}
}

// TestOneFigureOfTheJobIsAsked: the rest of what was told is kept meanwhile, and after
// the answer all of it is.
func TestOneFigureOfTheJobIsAsked(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	r, _ := k.say("job: gear is 5/8 double braid 16,000 break, block 20,000, drum, 3 on the ground, limit 600 lb, house units metric", "1")
	if !strings.Contains(r.Headline(), "limit 600 lb") || strings.Contains(r.Headline(), "20,000") || !strings.Contains(r.Text(), "“20,000”: is that the block's break strength or its working load?") {
		t.Errorf("the rest is not kept, or the block is: %s", r.Text())
	}
	if r, _ := k.say("what's the job?", "2"); !strings.Contains(r.Headline(), "limit 600 lb") {
		t.Errorf("the job is: %s", r.Text())
	}
	if r, _ := k.say("2", "1"); !strings.Contains(r.Headline(), "limit 600 lb") || !strings.Contains(r.Headline(), "block's strength 20,000 lb") {
		t.Errorf("the answer is not kept with the rest: %s", r.Text())
	}
}

// TestAFigureWithoutItsUnitKeepsTheRest keeps what is plain of a job's message, and asks
// which strength the one figure is.
func TestAFigureWithoutItsUnitKeepsTheRest(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	r, _ := k.say("job: limit 450 lb, block good for 9000, me climbing", "1")
	if head := r.Headline(); !strings.Contains(head, "limit 450 lb") || !strings.Contains(r.Text(), "“9000”: is that the block's break strength") {
		t.Errorf("the rest is not kept: %s", r.Text())
	}
	if r, _ := k.say("what's the job?", "1"); !strings.Contains(r.Headline(), "limit 450 lb") {
		t.Errorf("kept: %q", r.Headline())
	}
}

// TestALimitToComeIsNotKept leaves the limit that holds as it is.
func TestALimitToComeIsNotKept(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	k.say("job: limit 450 lb", "1")
	for text, why := range map[string]string{
		"limit is 800 lb from tomorrow":                     "tell it on the day",
		"limit goes up to 800 lb as of monday":              "tell it on the day",
		"limit goes to 700 lb tomorrow, today it is 500 lb": "tell it on the day",
		"límite 400 kg a partir de mañana":                  "dígalo ese día",
	} {
		if r, _ := k.say(text, "1"); !strings.Contains(r.Text(), why) {
			t.Errorf("%q: %s", text, r.Text())
		}
	}
	if r, _ := k.say("what's the job?", "1"); !strings.Contains(r.Headline(), "limit 450 lb") {
		t.Errorf("kept: %q", r.Headline())
	}
}

// TestPartsOfAJobAreForgotten drops what is named, keeps what is to stay, and clears the
// whole with why said back.
func TestPartsOfAJobAreForgotten(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	k.say("job: limit 450 lb, rope breaks at 9000 lb, wet rope, 3 people", "1")
	if r, _ := k.say("wipe the rope but keep the limit", "1"); !strings.Contains(r.Headline(), "the rope's strength and wet rope") {
		t.Errorf("the rope: %q", r.Headline())
	}
	if r, _ := k.say("what's the job?", "1"); !strings.Contains(r.Headline(), "limit 450 lb and 3 people") {
		t.Errorf("left: %q", r.Headline())
	}
	if r, _ := k.say("clear the job limit", "1"); !strings.Contains(r.Text(), "Kept for this job: 3 people") {
		t.Errorf("its limit alone: %q", r.Text())
	}
	if r, _ := k.say("límite 200 kg para el trabajo", "1"); r.Status() != bot.Answered {
		t.Errorf("another: %q", r.Text())
	}
	if r, _ := k.say("borra nomás el límite del trabajo", "1"); !strings.Contains(r.Headline(), "Ya no se guarda: el límite") {
		t.Errorf("only the limit: %q", r.Headline())
	}
	if r, _ := k.say("wipe the job, we moved to a new yard", "1"); !strings.Contains(r.Headline(), "Job cleared") {
		t.Errorf("all: %q", r.Headline())
	}
}

// TestNewJobDropsTheOldTree: also while a figure of the new one is still asked about.
func TestNewJobDropsTheOldTree(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	k.say("job: red oak, hitch 50 ft, limit 600 lb", "1")
	if r, _ := k.say("new job: limit 800 lb, block 20,000", "2"); !strings.Contains(r.Headline(), "limit 800 lb") || strings.Contains(r.Headline(), "oak") || strings.Contains(r.Headline(), "50 ft") {
		t.Errorf("the new job keeps: %s", r.Text())
	}
	if r, _ := k.say("what's the job?", "3"); !strings.Contains(r.Headline(), "limit 800 lb") || strings.Contains(r.Headline(), "oak") {
		t.Errorf("the job is: %s", r.Text())
	}
}

// TestWhatIsNotedDownIsTheJobs: its tree by the name that several share, which is asked
// about; what can only be a piece's is not kept.
func TestWhatIsNotedDownIsTheJobs(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	r, o := k.say("apunta que hoy el arbol es encino rojo y la polea esta a 45 pies", "1")
	if o.Intent != "job" || o.Status != "answered" || !strings.Contains(r.Text(), "¿Cuál encino rojo?") || o.Understood["hitch_height_m"] != 13.716 {
		t.Errorf("%s, %s: %s", o.Intent, o.Status, r.Text())
	}
	if r, _ := k.say("what's the job?", "2"); !strings.Contains(r.Headline(), "encino rojo and hitch height 45 pies.") || strings.Contains(r.Text(), "Not kept") {
		t.Errorf("not kept: %s", r.Text())
	}
	if r, _ := k.say("apunta que la rama de roble es de 14 pulgadas", "5"); r.Status() != bot.Refused {
		t.Errorf("a piece is noted down: %s", r.Text())
	}
	if r, o := k.say("crew of four today", "3"); o.Intent != "job" || !strings.Contains(r.Headline(), "4 people") {
		t.Errorf("%s: %s", o.Intent, r.Text())
	}
	if r, o := k.say("job rope strength is now 6 tonne, we swapped to the 18 mil", "4"); o.Status != "answered" || !strings.Contains(r.Headline(), "rope's thickness 18 mil") || !strings.Contains(r.Text(), "Read “6 tonne” as “6 tonne MBS”.") {
		t.Errorf("%s: %s", o.Status, r.Text())
	}
	if r, o := k.say("job rope strength is now 2 tonne", "5"); !strings.Contains(r.Text(), "is that the rope's break strength or its working load") {
		t.Errorf("%s: %s", o.Status, r.Text())
	}
}

func TestGearRightBehindTheJobIsTheJobs(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	k.say("job: limit 400 lb, 2 people", "1")
	if r, _ := k.say("the rope is 5/8 and the drum is the small one, 6 inch", "1"); !strings.Contains(r.Headline(), "limit 400 lb, rope's thickness 5/8") || !strings.Contains(r.Headline(), "drum's diameter 6 inch") {
		t.Errorf("the gear of the job is lost: %s", r.Text())
	}
	if r, _ := k.say("the rope is 5/8, red oak limb 12 in 14 ft", "1"); strings.Contains(r.Headline(), "Kept for this job") {
		t.Errorf("a piece is none of the job's: %s", r.Text())
	}
}

// TestAJobSaysHowManyThereAreInAll keeps of a crew that is shared out those at the rope, and
// says back how many there are.
func TestAJobSaysHowManyThereAreInAll(t *testing.T) {
	k := &talk{Clerk: newClerk(t, &shelf{}), t: t}
	for text, back := range map[string]string{
		"job: 4 people, me on the rope, limit 400 lb":         "Passed over: “4 people”",
		"trabajo: 4 personas, yo en la cuerda, límite 400 lb": "“4 personas”",
	} {
		r, _ := k.say(text, "1")
		if !strings.Contains(r.Headline(), "1 person") || !strings.Contains(r.Text(), back) {
			t.Errorf("%q: %s", text, r.Text())
		}
	}
}
