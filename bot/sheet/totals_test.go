package sheet

import (
	"encoding/json"
	"math"
	"testing"
	"time"

	"heft/bot"
)

// A plan weight is said as the answer says it: rounded up, in the crew's own
// units first.
func TestWeightsAreNeverShownLighter(t *testing.T) {
	for _, c := range []struct {
		kg     float64
		metric bool
		want   string
	}{
		{0, true, ""}, {-1, true, ""}, {math.NaN(), true, ""}, {math.Inf(1), false, ""},
		// The pound is 0.45359237 kg exactly (NIST SP 811, appendix B).
		{453.59237, false, "1,000 lb (460 kg)"},
		{453.59237, true, "460 kg (1,000 lb)"},
		{640, false, "1,450 lb (640 kg)"}, // 1410.96 lb
		{640.01, true, "650 kg (1,450 lb)"},
		{1000, true, "1,000 kg (2,250 lb)"}, // 2204.62 lb
	} {
		if got := weight(c.kg, c.metric); got != c.want {
			t.Errorf("%v kg: %q, want %q", c.kg, got, c.want)
		}
	}
}

func TestTotals(t *testing.T) {
	now := time.Unix(0, 0)
	day := mustDay(t, "2026-11-25", "UTC")
	over := json.RawMessage(`{"over_limit":true,"confirm":true}`)
	for _, c := range []struct {
		es   []bot.Entry
		want string
	}{
		{nil, "Nothing was asked on this day."},
		{
			[]bot.Entry{{Status: bot.Refused, Delivered: &now}},
			"1 question: 0 answered, 0 asked back, 1 refused. No plan weight given. 0 not delivered. " +
				"0 over the limit, 0 not confirmed, 0 never completed; 0 confirmed on site, 0 changed after being asked.",
		},
		{
			[]bot.Entry{
				{Status: bot.Answered, PlanKg: 10, Channel: "C1", Posted: "1", Result: over},
				{Status: bot.Answered, PlanKg: 453.59237, Delivered: &now, Channel: "C1", Posted: "1", Result: over},
				{Status: bot.Answered, PlanKg: 9, Channel: "C1", Posted: "2", Result: over, Confirmed: &bot.Confirmation{User: "U1"}},
				{Status: bot.Needs, Channel: "C2"}, {Status: "unheard of", Channel: "C2"},
			},
			"5 questions: 3 answered, 1 asked back, 0 refused. Heaviest pick 1,000 lb (460 kg). 4 not delivered. " +
				"2 over the limit, 1 not confirmed, 1 never completed; 1 confirmed on site, 1 changed after being asked.",
		},
	} {
		if got := sum(day, facts(c.es, bot.VoiceOf(""))).said(bot.VoiceOf("")); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}
