package sheet

import (
	"encoding/json"
	"strings"
	"testing"
	"time"

	"heft/bot"
)

// worked is a day with everything that can come of a question: a job, an edit,
// an answer that gave way, one over the limit, one confirmed, one whose working
// was looked at.
func worked(t *testing.T, day Day) (Day, []bot.Entry) {
	t.Helper()
	const site, rosa, inge = "C0MILLLANE", "U0ROSA0001", "U0INGE0003"
	minute := 0
	entry := func(words string, change func(*bot.Entry)) bot.Entry {
		minute += 5
		at := day.From.Add(time.Duration(minute) * time.Minute)
		e := bot.Entry{
			ID: words, Asked: at, Workspace: "T1", Channel: site, User: rosa, Words: words, Status: bot.Answered,
			Reply: "Of “" + words + "”.\nThe rest.", Delivered: &at, Schema: bot.SchemaVersion, Calc: "1",
		}
		change(&e)
		return e
	}
	told := `{"Intent":"job","SaysUnits":true,"Units":"metric","Site":{"Value":"12 Birch Lane"},"Arborist":{"Value":"` + inge + `"},` +
		`"Quantities":[{"Field":"limit_kg","Low":300,"High":300,"Words":"300 kg"}]}`
	const read = `"Species":{"Value":{"Scientific":"Quercus rubra","Name":"red oak"}},"Shape":{"Value":"limb"},"Units":"imperial",` +
		`"Quantities":[{"Field":"butt_diameter_m","Low":0.3556,"High":0.3556,"Words":"14 in"},{"Field":"length_m","Low":6.7056,"High":6.7056,"Words":"22 ft"}]`
	es := []bot.Entry{
		entry("job: limit 300 kg", func(e *bot.Entry) { e.Intent, e.Question = "job", json.RawMessage(told) }),
		entry("140 in red oak limb 22 ft", func(e *bot.Entry) { e.Message, e.Posted, e.PlanKg = "1.1", "1.2", 300 }),
		entry("14 in red oak limb 22 ft", func(e *bot.Entry) {
			e.Message, e.Posted, e.PlanKg, e.Result = "1.1", "1.2", 300.5, json.RawMessage(`{"over_limit":true,"confirm":true}`)
			e.Question = json.RawMessage(`{` + read + `}`)
		}),
		entry("swing past a roof", func(e *bot.Entry) {
			e.Posted, e.Result = "2.2", json.RawMessage(`{"confirm":true}`)
			e.Confirmed = &bot.Confirmation{User: inge, At: e.Asked.Add(time.Minute), Note: "roof <boarded>"}
		}),
		entry("maple limb 12 in", func(e *bot.Entry) { e.Status, e.Posted = bot.Needs, "3.2" }),
		entry("sugar maple limb 12 in", func(e *bot.Entry) { e.Posted = "3.2" }),
		entry("show the numbers, red oak limb", func(e *bot.Entry) {
			e.ID, e.Thread, e.Posted, e.User = bot.PressID("1.2", inge, "1"), "1.1", "1.2", inge
			e.PlanKg, e.Result = 300.5, json.RawMessage(`{"over_limit":true,"confirm":true}`)
			e.Question = json.RawMessage(`{"Explain":"numbers",` + read + `}`)
		}),
	}
	day.Jobs = map[Place]bot.Job{{"T1", site}: bot.JobOf(es[0])}
	day.Names = map[string]string{rosa: "Rosa", inge: "Inge", site: "Mill Lane"}
	return day, es
}

func TestThePageTellsWhatCameOfAQuestion(t *testing.T) {
	day, es := worked(t, mustDay(t, "2026-11-25", "America/Denver"))
	got := render(t, HTML, day, es)
	for _, want := range []string{
		"<bdi>12 Birch Lane</bdi>", "<b>Channel:</b> <bdi>Mill Lane</bdi>", "<b>Crew:</b> <bdi>Rosa</bdi>.", "<b>Arborist:</b> <bdi>Inge</bdi>",
		"<b>Gear in force:</b> <bdi>limit 300 kg</bdi>, <bdi>metric units</bdi>",
		"Read as: red oak, limb, butt diameter 14 in, length 22 ft", "Edited. At 00:10 it was: 140 in red oak limb 22 ft",
		"Another answer took its place at 00:15", "Took the place of what was asked at 00:25: maple limb 12 in",
		`<span class="flag">OVER LIMIT</span> <span class="flag">NOT CONFIRMED</span> answered`,
		"Confirmed on site by Inge at 00:21: roof &lt;boarded&gt;", `<li class="alarm"><b>1</b> over the limit</li>`,
		`<li class="alarm"><b>1</b> not confirmed</li>`, "<li><b>0</b> never completed</li>", "<li><b>1</b> confirmed on site</li>", "<li><b>2</b> changed after</li>",
		// The job asks for metric units: 300.5 kg is 662.5 lb.
		"<b>310 kg (670 lb)</b> heaviest pick", "<b>6</b> questions",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("the page lacks %q", want)
		}
	}
	for _, bad := range []string{"U0ROSA0001", "U0INGE0003", "C0MILLLANE", "NEVER COMPLETED", "show the numbers", "00:35"} {
		if strings.Contains(got, bad) {
			t.Errorf("the page has %q", bad)
		}
	}
}

func TestScriptsReadTheSameFacts(t *testing.T) {
	day, es := worked(t, mustDay(t, "2026-11-25", "America/Denver"))
	var list []map[string]any
	if err := json.Unmarshal([]byte(render(t, JSON, day, es)), &list); err != nil {
		t.Fatal(err)
	}
	edited, stood, completed, view := list[2], list[3], list[5], list[6]
	for _, c := range []struct{ got, want any }{
		{edited["site"], "12 Birch Lane"}, {edited["changed_from"], "140 in red oak limb 22 ft"},
		{edited["reading"], "red oak, limb, butt diameter 14 in, length 22 ft"}, {completed["changed_from"], "maple limb 12 in"},
		{view["changed_from"], nil}, {view["flags"], nil}, {view["view_of"], edited["id"]}, {view["words"], "show the numbers, red oak limb"}, {edited["view_of"], nil},
	} {
		if c.got != c.want {
			t.Errorf("%v, want %v", c.got, c.want)
		}
	}
	if flags, _ := json.Marshal(edited["flags"]); string(flags) != `["over","unconfirmed"]` {
		t.Errorf("flags %s", flags)
	}
	if inForce, _ := json.Marshal(edited["in_force"]); string(inForce) != `["limit 300 kg","metric units"]` || edited["arborist"] != "U0INGE0003" {
		t.Errorf("in force %s, arborist %v", inForce, edited["arborist"])
	}
	by := stood["confirmed"].(map[string]any)
	if by["by"] != "U0INGE0003" || by["at"] != "2026-11-25T00:21:00-07:00" || by["note"] != "roof <boarded>" {
		t.Errorf("confirmed %v", by)
	}
	rows := strings.Split(render(t, CSV, day, es), "\n2026")
	if want := `,,,12 Birch Lane,"red oak, limb, butt diameter 14 in, length 22 ft",over unconfirmed,140 in red oak limb 22 ft,U0INGE0003,limit 300 kg; metric units,`; !strings.HasSuffix(rows[3], want) {
		t.Errorf("the row %q lacks %q", rows[3], want)
	}
	if want := "U0INGE0003,2026-11-25T00:21:00-07:00,roof <boarded>,12 Birch Lane,,,,U0INGE0003,limit 300 kg; metric units,"; !strings.HasSuffix(rows[4], want) {
		t.Errorf("the row %q lacks %q", rows[4], want)
	}
	if want := "over unconfirmed"; strings.Contains(rows[7], want) || !strings.HasSuffix(rows[7], ",14 in red oak limb 22 ft\n") {
		t.Errorf("the row of a view is %q", rows[7])
	}
}

// The clock goes from 02:00 back to 01:00 on 2026-11-01 in this zone (tz
// database): both hours are told apart.
func TestAConfirmationInTheHourThatComesTwice(t *testing.T) {
	day := mustDay(t, "2026-11-01", "America/Denver")
	e := bot.Entry{Asked: day.From.Add(90 * time.Minute), Status: bot.Answered, Confirmed: &bot.Confirmation{User: "U1", At: day.From.Add(150 * time.Minute)}}
	got := render(t, HTML, day, []bot.Entry{e})
	for _, want := range []string{">01:30 MDT<", "at 01:30 MST"} {
		if !strings.Contains(got, want) {
			t.Errorf("it lacks %q:\n%s", want, got)
		}
	}
}
