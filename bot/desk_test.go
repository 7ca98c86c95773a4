package bot_test

import (
	"encoding/json"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"
	"unicode"

	"heft/bot"
)

// asked is any moment: the desk has no clock of its own.
var asked = time.Date(2026, 11, 25, 14, 2, 0, 0, time.UTC)

const reminder = "Confirm with the qualified arborist on site"

func newDesk(t testing.TB) *bot.Desk {
	t.Helper()
	d, err := bot.NewDesk()
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func event(text string) bot.Event {
	return bot.Event{ID: "e1", Workspace: "w", Channel: "c", Thread: "t", User: "u", Text: text, At: asked}
}

// answer asks one question by itself.
func answer(t testing.TB, d *bot.Desk, text string) (bot.Reply, bot.Entry) {
	t.Helper()
	r, e, _ := d.Answer(event(text), bot.Turn{})
	return r, e
}

// object is what scripts read.
type object struct {
	Status     string
	Intent     string
	Understood map[string]any
	Kept       []string
	Changed    []string
	Language   string
	Weight     *struct {
		Low    float64 `json:"low_kg"`
		Likely float64 `json:"likely_kg"`
		High   float64 `json:"high_kg"`
	}
	Lower *struct {
		Wraps, WrapsMin, WrapsMax float64
		Hand                      float64 `json:"hand_force_n"`
	}
	BlockLoad *float64 `json:"block_load_n"`
	Rope      *float64 `json:"rope_m"`
	Also      []object
	Tree      *struct {
		Total    float64 `json:"total_kg"`
		Heaviest float64 `json:"heaviest_kg"`
		Pieces   int
	}
	Needs    []string
	Problems []string
	Cautions []string
	Text     string
}

func decode(t testing.TB, r bot.Reply) object {
	t.Helper()
	var o object
	if err := json.Unmarshal(r.JSON(), &o); err != nil {
		t.Fatalf("%s: %v", r.JSON(), err)
	}
	return o
}

func TestEveryPathCarriesTheReminder(t *testing.T) {
	d := newDesk(t)
	for _, text := range []string{
		"14 in red oak limb 22 ft, hitched at 35 ft", // an answer
		"maple limb 12 in 15 ft",                     // an ask
		"14 in red oak limb 900 ft",                  // past the method
		"red oak limb near the power line",           // a stop
		"mayday",
		"rotten oak limb 14 in 10 ft",
		"banana bread recipe",
		"swing of a 400 lb log", // no method yet
		"help", "", "   ", "🌳", strings.Repeat("oak ", 900),
	} {
		r, e := answer(t, d, text)
		if !strings.HasSuffix(r.Text(), "come first.") || !strings.Contains(r.Text(), reminder) {
			t.Errorf("%q: no reminder in %q", text, r.Text())
		}
		if !strings.Contains(e.Reply, reminder) {
			t.Errorf("%q: no reminder in the log", text)
		}
		o := decode(t, r)
		if !slices.ContainsFunc(o.Cautions, func(c string) bool { return strings.Contains(c, reminder) }) {
			t.Errorf("%q: no reminder among the cautions %q", text, o.Cautions)
		}
		if o.Text != r.Text() || o.Needs == nil || o.Problems == nil || o.Understood == nil {
			t.Errorf("%q: the object is incomplete: %+v", text, o)
		}
	}
}

// A stop holds no figure at all, whatever else the message said.
func TestStopsHoldNoFigures(t *testing.T) {
	d := newDesk(t)
	piece := "14 in red oak limb 22 ft, hitched at 35 ft, 3 wraps "
	for _, words := range []string{
		"next to the power line", "over the service drop", "12 kv line beside it", "wires below",
		"mayday", "he's hurt", "man down", "the log is rotten", "cracked at the union", "hollow",
	} {
		for _, text := range []string{piece + words, words + " " + piece, strings.ToUpper(words + ". " + piece)} {
			r, e := answer(t, d, text)
			o := decode(t, r)
			if r.Status() != bot.Refused || o.Weight != nil || o.Lower != nil || o.BlockLoad != nil || o.Rope != nil || len(o.Understood) > 0 || e.PlanKg != 0 {
				t.Errorf("%q: figures in %+v", text, o)
			}
			if strings.ContainsFunc(r.Text(), unicode.IsDigit) {
				t.Errorf("%q: a digit in %q", text, r.Text())
			}
		}
	}
}

func TestObjectKeepsToTheWords(t *testing.T) {
	d := newDesk(t)
	r, e := answer(t, d, "14 in red oak limb 22 ft, hitched at 35 ft")
	o := decode(t, r)
	var keys []string
	for k := range o.Understood {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	want := []string{"butt_diameter_m", "hitch_height_m", "length_m", "shape", "species"}
	if !slices.Equal(keys, want) {
		t.Errorf("understood %v, want %v", keys, want)
	}
	if o.Status != "answered" || o.Intent != "lower" || o.Language != "en" {
		t.Errorf("%+v", o)
	}
	if w := o.Weight; w == nil || !(0 < w.Low && w.Low <= w.Likely && w.Likely <= w.High) {
		t.Errorf("weight %+v", o.Weight)
	}
	if e.PlanKg != o.Weight.High || !strings.HasPrefix(string(r.JSON()), strings.TrimSuffix(string(e.Result), "}")+`,"text":`) || e.Reply != r.Text() {
		t.Error("the log does not hold what was answered")
	}
}

// The first line alone must serve as a phone notification.
func TestHeadline(t *testing.T) {
	d := newDesk(t)
	tests := map[string]string{
		"14 in red oak limb 22 ft, hitched at 35 ft":                  `^Red oak limb, 14 in butt × 22 ft: plan on [\d,]+ lb, start with [\d½]+ wraps\.$`,
		"14 in red oak limb 22 ft":                                    `^Red oak limb, 14 in butt × 22 ft: plan on [\d,]+ lb\.$`,
		"600 lb limb, 1 wrap":                                         `1 wrap LET IT RUN AWAY, start with [\d½]+ wraps\.$`,
		"600 lb limb, 2 wraps":                                        `2 wraps TOO FEW, start with`,
		"600 lb limb, 4 wraps":                                        `4 wraps hold it\.$`,
		"14 in red oak limb 22 ft, limit 600 lb":                      `OVER your limit of 600 lb`,
		"block load for 600 lb, 60 deg between the legs":              `top block 1,050 lb \(4\.7 kN\)\.$`,
		"how much rope for a hitch at 35 ft, I have 80 ft of rope":    `your 80 ft is TOO SHORT: the end comes off with the piece up to 10 ft up\.$`,
		"600 lb, rope turns 30° at the redirect":                      `the redirect sees 320 lb \(1\.4 kN\) held, 360 lb lifting, rope turned 30°\.$`,
		"35 cm red oak limb 7 m, hitched at 10 m":                     `^Red oak limb, 35 cm butt × 7 m: plan on [\d,]+ kg, start`,
		"6'4\" white ash log 14 in":                                   `^White ash log, 14 in × 6 ft 4 in: plan on`,
		"dead white ash log 14-16 in 8 ft":                            `^Dead white ash log, 14–16 in × 8 ft: plan on`,
		"red oak limb butt 14 in tip 10 in 22 ft long block at 35 ft": `^Red oak limb, 14 in butt, 10 in tip × 22 ft: plan on`,
	}
	for text, want := range tests {
		r, _ := answer(t, d, text)
		if !regexp.MustCompile(want).MatchString(r.Headline()) {
			t.Errorf("%q: headline %q, want %s", text, r.Headline(), want)
		}
		if n := len([]rune(r.Headline())); n > 120 {
			t.Errorf("%q: a headline of %d characters", text, n)
		}
		if n := strings.Count(r.Text(), "\n"); n > 11 {
			t.Errorf("%q: %d lines", text, n+1)
		}
	}
}

// Loads are rounded up and low ends down, never the other way.
func TestRoundingIsTowardCaution(t *testing.T) {
	d := newDesk(t)
	number := regexp.MustCompile(`Weight ([\d,]+)–([\d,]+) lb`)
	for _, text := range []string{"14 in red oak limb 22 ft", "3 in white ash limb 4 ft", "30 in black walnut log 9 ft"} {
		r, _ := answer(t, d, text)
		o := decode(t, r)
		m := number.FindStringSubmatch(r.Text())
		if m == nil {
			t.Fatalf("%q: no weight in %q", text, r.Text())
		}
		low, high := atof(t, m[1]), atof(t, m[2])
		const pound = 0.45359237 // kg, exact
		if low*pound > o.Weight.Low || high*pound < o.Weight.High {
			t.Errorf("%q: says %v–%v lb for %v–%v kg", text, low, high, o.Weight.Low, o.Weight.High)
		}
		if low*pound < 0.9*o.Weight.Low-1 || high*pound > 1.1*o.Weight.High+1 {
			t.Errorf("%q: %v–%v lb is too coarse for %v–%v kg", text, low, high, o.Weight.Low, o.Weight.High)
		}
	}
}

// The crew's own words come back short, on one line and without anything that
// a terminal or a page could take for a command.
func TestEchoIsTame(t *testing.T) {
	d := newDesk(t)
	for _, text := range []string{
		"14 in \x1b[31mblorf\x1b[0m limb 22 ft",
		"14 in " + strings.Repeat("blorf", 60) + " limb 22 ft",
		"14 in `blorf“ limb\u202e 22 ft", "bl\u0000orf limb 14 in",
	} {
		r, _ := answer(t, d, text)
		for _, c := range strings.ReplaceAll(r.Text(), "\n", "") {
			if !unicode.IsPrint(c) {
				t.Errorf("%q: %q in %q", text, c, r.Text())
			}
		}
		if strings.ContainsRune(r.Text(), '`') || len(r.Text()) > 600 {
			t.Errorf("%q: %q", text, r.Text())
		}
	}
}

func atof(t *testing.T, s string) float64 {
	t.Helper()
	var v float64
	if err := json.Unmarshal([]byte(strings.ReplaceAll(s, ",", "")), &v); err != nil {
		t.Fatal(err)
	}
	return v
}

// A list of pieces is answered piece by piece, with its sum; a message whose
// parts lean on one another stays one question.
func TestSeveralPieces(t *testing.T) {
	d := newDesk(t)
	r, e := answer(t, d, "600 lb log\n400 lb limb; 1,000 lb spar? total please")
	o := decode(t, r)
	const pound = 0.45359237 // kg, exact
	if r.Status() != bot.Answered || len(o.Also) != 2 || o.Tree == nil || o.Tree.Pieces != 3 ||
		math.Abs(o.Tree.Total-2000*pound) > 1e-6 || math.Abs(o.Tree.Heaviest-1000*pound) > 1e-6 {
		t.Errorf("%s", r.JSON())
	}
	if !strings.Contains(r.Headline(), "3 pieces: 2,000 lb in all, heaviest pick 1,000 lb") || math.Abs(e.PlanKg-1000*pound) > 1e-6 {
		t.Errorf("%q, logged %v kg", r.Headline(), e.PlanKg)
	}
	r, _ = answer(t, d, "600 lb log; maple log 10 in 6 ft")
	if o = decode(t, r); r.Status() != bot.Needs || o.Tree != nil || len(o.Also) != 1 || o.Also[0].Status != "needs" {
		t.Errorf("with one in doubt: %s", r.JSON())
	}
	r, _ = answer(t, d, "600 lb log; power line beside it; 400 lb log")
	if o = decode(t, r); r.Status() != bot.Refused || o.Weight != nil || len(o.Also) > 0 {
		t.Errorf("beside a power line: %s", r.JSON())
	}
	r, _ = answer(t, d, "14 in red oak limb; 22 ft; hitched at 35 ft")
	if o = decode(t, r); len(o.Also) > 0 || o.Understood["hitch_height_m"] != 10.668 {
		t.Errorf("parts that lean: %s", r.JSON())
	}
}
