package sheet

import (
	"bytes"
	"encoding/json"
	"errors"
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"heft/bot"
)

var update = flag.Bool("update", false, "write the goldens anew; read them before they are kept")

// entries are a day in the life: answers, an ask-back, a refusal, and a
// mischief-maker.
func entries(day Day) []bot.Entry {
	at := func(hour, minute int) time.Time {
		return day.From.UTC().Add(time.Duration(hour)*time.Hour + time.Duration(minute)*time.Minute)
	}
	posted := func(hour, minute int) *time.Time {
		t := at(hour, minute).Add(2 * time.Second)
		return &t
	}
	base := bot.Entry{Workspace: "T-ridge", Channel: "C-north", Calc: "3", Schema: 1}
	with := func(change func(*bot.Entry)) bot.Entry {
		e := base
		change(&e)
		return e
	}
	return []bot.Entry{
		with(func(e *bot.Entry) {
			e.ID, e.Asked, e.Thread, e.User = "Ev1", at(7, 5), "1764050700.000100", "U-ana"
			e.Words = "14 in red oak limb 22 ft, hitched at 35 ft"
			e.Status, e.Intent, e.PlanKg = bot.Answered, "lower", 640.25
			e.Question = json.RawMessage(`{"species": "Quercus rubra"}`)
			e.Result = json.RawMessage(`{"status":"answered","weight":{"high_kg":640.25}}`)
			e.Reply = "Plan on 641 kg (1,412 lb), 3 wraps.\nLikely 548 kg.\nConfirm with the qualified arborist on site."
			e.Delivered = posted(7, 5)
		}),
		with(func(e *bot.Entry) {
			e.ID, e.Asked, e.Thread, e.User = "Ev2", at(7, 41), "1764052860.000200", "U-björn"
			e.Words = "how heavy is a 3 m maple log"
			e.Status, e.Intent = bot.Needs, "weight"
			e.Result = json.RawMessage(`{"status":"needs","needs":["species","diameter_m"]}`)
			e.Reply = "Which maple, and what diameter?\nConfirm with the qualified arborist on site."
			e.Delivered = posted(7, 41)
		}),
		with(func(e *bot.Entry) {
			e.ID, e.Asked, e.Thread, e.User = "Ev5", at(12, 10), "1764069000.000500", "U-ana"
			e.Words = "30 in red oak log 8 ft, limit 600 lb"
			e.Status, e.Intent, e.PlanKg = bot.Answered, "weight", 1460
			e.Result = json.RawMessage(`{"status":"answered","over_limit":true,"confirm":true}`)
			e.Reply = "Red oak log: plan on 3,250 lb, OVER your limit of 600 lb.\nConfirm with the qualified arborist on site."
			e.Delivered = posted(12, 10)
			e.Confirmed = &bot.Confirmation{Workspace: "T-ridge", ID: "Ev5", User: "=U-dana", At: at(12, 15), Note: "=1+1 <b>with</b> a\u202e machine"}
		}),
		with(func(e *bot.Entry) {
			e.ID, e.Asked, e.Thread, e.User = "Ev3", at(13, 20), "1764073200.000300", "U-ana"
			e.Words = "lower a 2 t ash stem next to the power line"
			e.Status, e.Intent = bot.Refused, "lower"
			e.Result = json.RawMessage(`{"status":"refused"}`)
			e.Reply = "Stop: a power line. Call the utility and wait.\nConfirm with the qualified arborist on site."
			e.Failure = "channel_not_found"
		}),
		with(func(e *bot.Entry) {
			e.ID, e.Asked, e.User, e.Channel = "Ev4", at(23, 59), "=cmd|'/c calc'!A1", "\x1b]0;mine\x07<script>alert(1)</script>"
			e.Words = "@SUM(1;=2)\r\n\x1b[31mred\x1b[0m \u202eoak\u2069 \u009b2J\t<!channel> & \"quoted\""
			e.Status, e.Intent, e.PlanKg = bot.Answered, "weight", 1234.5
			e.Question = json.RawMessage(`{"torn`)
			e.Reply = "Plan on 1,235 kg (2,722 lb). This line goes on and on, far beyond the room that a table has for it.\n-2 kg"
			e.Delivered = posted(23, 59)
		}),
	}
}

func render(t testing.TB, format Format, day Day, es []bot.Entry) string {
	t.Helper()
	var out bytes.Buffer
	if err := Write(&out, format, day, es); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

func TestGoldens(t *testing.T) {
	day := mustDay(t, "2026-11-25", "Europe/Berlin")
	for _, format := range []Format{Table, JSON, CSV, HTML} {
		for name, es := range map[string][]bot.Entry{"day": entries(day), "empty": nil} {
			t.Run(name+"/"+string(format), func(t *testing.T) { golden(t, name, format, day, es) })
		}
	}
}

// The page and the table speak the day's language; what scripts read does not.
func TestTheDayInSpanish(t *testing.T) {
	day, es := worked(t, mustDay(t, "2026-11-25", "America/Denver"))
	english := map[Format]string{}
	for _, format := range []Format{JSON, CSV} {
		english[format] = render(t, format, day, es)
	}
	day.Voice = bot.VoiceOf("es")
	for format, want := range english {
		if got := render(t, format, day, es); got != want {
			t.Errorf("%s: %s", format, cmp.Diff(want, got))
		}
	}
	long, _ := worked(t, mustDay(t, "2026-11-01", "America/Denver"))
	long.Voice = day.Voice
	for _, format := range []Format{Table, HTML} {
		golden(t, "worked-es", format, day, es)
		golden(t, "empty-es", format, long, nil)
	}
}

// golden compares what a day looks like with what was read and accepted.
func golden(t *testing.T, name string, format Format, day Day, es []bot.Entry) {
	t.Helper()
	got := render(t, format, day, es)
	path := filepath.Join("testdata", name+"."+string(format)+".golden")
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s: -golden +rendered:\n%s", path, diff)
	}
}

// The page has no words of its own, which no language could say otherwise.
func TestThePageHasNoWordsOfItsOwn(t *testing.T) {
	own := regexp.MustCompile(`(?s)<style>.*?</style>|\{\{.*?\}\}|<[^>]*>`).ReplaceAllString(pageText, "")
	if said := regexp.MustCompile(`\pL+`).FindAllString(own, -1); len(said) > 0 || !strings.Contains(pageText, "<h1>{{.Sheet}}</h1>") {
		t.Errorf("it says %q", said)
	}
}

func TestFormats(t *testing.T) {
	for _, name := range []string{"table", "json", "csv", "html"} {
		if got, err := ParseFormat(name); err != nil || string(got) != name {
			t.Errorf("%q: %q, %v", name, got, err)
		}
	}
	day := mustDay(t, "2026-11-25", "UTC")
	for _, name := range []string{"", "JSON", "xml", "table ", "<!here>"} {
		_, err := ParseFormat(name)
		if err == nil || err.Error() != "the formats are table, json, csv and html" {
			t.Errorf("%q: %v", name, err)
		}
		var out bytes.Buffer
		if err := Write(&out, Format(name), day, entries(day)); err == nil || out.Len() > 0 {
			t.Errorf("write as %q: %v, %q", name, err, out.String())
		}
	}
}

// full takes some bytes and then fails, as a disk or a closed pipe does.
type full struct{ room int }

var errFull = errors.New("no room left")

func (f *full) Write(p []byte) (int, error) {
	if len(p) > f.room {
		n := f.room
		f.room = 0
		return n, errFull
	}
	f.room -= len(p)
	return len(p), nil
}

func TestAFailingWriterIsReported(t *testing.T) {
	day := mustDay(t, "2026-11-25", "UTC")
	var many []bot.Entry
	for range 200 {
		many = append(many, entries(day)...)
	}
	for _, format := range []Format{Table, JSON, CSV, HTML} {
		whole := len(render(t, format, day, many))
		for _, room := range []int{0, 1, 5000, whole - 1} {
			if err := Write(&full{room}, format, day, many); !errors.Is(err, errFull) {
				t.Errorf("%s with room for %d of %d: %v", format, room, whole, err)
			}
		}
	}
}

func TestJSONKeepsEverything(t *testing.T) {
	day := mustDay(t, "2026-11-25", "Europe/Berlin")
	es := entries(day)
	var got []map[string]any
	if err := json.Unmarshal([]byte(render(t, JSON, day, es)), &got); err != nil {
		t.Fatal(err)
	}
	if len(got) != len(es) {
		t.Fatalf("%d objects for %d entries", len(got), len(es))
	}
	for i, e := range es {
		for field, want := range map[string]string{
			"id": e.ID, "user": e.User, "channel": e.Channel, "words": e.Words, "reply": e.Reply,
		} {
			if got[i][field] != want {
				t.Errorf("%s: %s is %q, want %q", e.ID, field, got[i][field], want)
			}
		}
	}
	if kg, ok := got[1]["plan_kg"]; ok {
		t.Errorf("a question without a plan weight has one: %v", kg)
	}
	if asked := got[0]["asked"]; asked != "2026-11-25T07:05:00+01:00" {
		t.Errorf("asked %v", asked)
	}
	if torn := got[4]["question"]; torn != `{"torn` {
		t.Errorf("torn JSON came out as %v", torn)
	}
}

func TestThePageStandsAlone(t *testing.T) {
	day := mustDay(t, "2026-11-25", "Europe/Berlin")
	got := strings.ToLower(render(t, HTML, day, entries(day)))
	for _, bad := range []string{"<script", "<img", "<link", "<iframe", "src=", "href=", "url(", "http:", "https:", "@import", "onload"} {
		if strings.Contains(got, bad) {
			t.Errorf("the page holds %q", bad)
		}
	}
}
