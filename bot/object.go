package bot

import (
	"encoding/json"
	"math"

	"heft/parser"
)

// object is the reply as scripts read it. A field that does not apply is
// absent, never zero.
type object struct {
	Status     Status           `json:"status"`
	Intent     parser.Intent    `json:"intent,omitempty"`
	Understood map[string]any   `json:"understood"`
	Kept       []string         `json:"kept,omitempty"`
	Changed    []string         `json:"changed,omitempty"`
	Language   string           `json:"language"`
	Weight     *weightObject    `json:"weight,omitempty"`
	Lower      *lowerObject     `json:"lower,omitempty"`
	Lift       *liftObject      `json:"lift,omitempty"`
	Raise      *raiseObject     `json:"raise,omitempty"`
	Travel     *travelObject    `json:"travel,omitempty"`
	Swing      *swingObject     `json:"swing,omitempty"`
	Hang       *hangObject      `json:"hang,omitempty"`
	Balance    *balanceObject   `json:"balance,omitempty"`
	Anchor     *anchorObject    `json:"anchor,omitempty"`
	Drop       *dropObject      `json:"drop,omitempty"`
	Gear       *gearObject      `json:"gear,omitempty"`
	CutPlan    *cutPlanObject   `json:"cut_plan,omitempty"`
	Highest    float64          `json:"highest_block_m,omitempty"` // for the rope at hand, where that was asked
	Lowest     float64          `json:"lowest_block_m,omitempty"`  // above the hinge of a limb that is stood up, likewise
	Most       float64          `json:"most_kg,omitempty"`         // the heaviest piece, where that was asked
	BlockLoad  float64          `json:"block_load_n,omitempty"`
	Rope       float64          `json:"rope_m,omitempty"`
	RopeEnd    *ropeEndObject   `json:"rope_end,omitempty"`
	Redirects  []redirectObject `json:"redirects,omitempty"`
	Notch      float64          `json:"notch_deg,omitempty"`
	Needs      []parser.Field   `json:"needs"`
	Problems   []string         `json:"problems"`
	Cautions   []string         `json:"cautions"`
	Tree       *treeObject      `json:"tree,omitempty"`
	OverLimit  bool             `json:"over_limit,omitempty"`
	Confirm    bool             `json:"confirm,omitempty"` // somebody on site has to stand by it
	Also       []object         `json:"also,omitempty"`
	Text       string           `json:"text,omitempty"` // last: see withText
}

type weightObject struct {
	Low    float64 `json:"low_kg"`
	Likely float64 `json:"likely_kg"`
	High   float64 `json:"high_kg"`
}

type lowerObject struct {
	Wraps float64 `json:"wraps"`
	Least float64 `json:"wraps_min"`
	Most  float64 `json:"wraps_max"`
	Hand  float64 `json:"hand_force_n"`
}

// understood lists what was taken from the words, and nothing else.
func understood(q parser.Question) map[string]any {
	out := make(map[string]any, len(q.Quantities)+3)
	if q.Species != nil {
		out["species"] = q.Species.Value.Scientific
	}
	if q.Shape != nil {
		out["shape"] = q.Shape.Value
	}
	if q.Condition != nil {
		out["condition"] = q.Condition.Value
	}
	for _, x := range q.Quantities {
		if x.Field == parser.Turn {
			continue // said once for every block: see turnsSaid
		}
		if x.Low == x.High {
			out[string(x.Field)] = tidy(x.Low)
			continue
		}
		out[string(x.Field)] = [2]float64{tidy(x.Low), tidy(x.High)}
	}
	if turns := turnsSaid(q); len(turns) > 0 {
		out["turns"] = turns
	}
	return out
}

// tidy takes the last bits of a conversion off: 14 in are 0.3556 m.
func tidy(v float64) float64 {
	r := math.Round(v*1e9) / 1e9
	if math.IsInf(r, 0) {
		return v
	}
	return r
}

// withText adds the reply's text to an object that was encoded without: the
// journal keeps the text once, in a column of its own.
func withText(object json.RawMessage, text string) json.RawMessage {
	quoted, _ := json.Marshal(text) // a string: it cannot fail
	out := make(json.RawMessage, 0, len(object)+len(quoted)+8)
	out = append(out, object[:len(object)-1]...)
	out = append(out, `,"text":`...)
	return append(append(out, quoted...), '}')
}

// encode writes an object on one line. It cannot fail: every number in it is
// finite, or the calculator would have refused it.
func encode(o object) json.RawMessage {
	b, err := json.Marshal(o)
	if err != nil {
		b, _ = json.Marshal(object{Status: Refused, Problems: []string{err.Error()}})
	}
	return b
}

// into writes the figures into the object that scripts read.
func (a *answer) into(o *object) {
	if a.figures != nil {
		defer a.figures(o)
	}
	r := a.result
	if r == nil {
		return
	}
	if w := r.Weight; w.High > 0 {
		o.Weight = &weightObject{float64(w.Low), float64(w.Likely), float64(w.High)}
	}
	if l := r.Lowering; l != nil {
		o.Lower = &lowerObject{float64(l.Start), float64(l.Least), float64(l.Most), math.Round(float64(l.Hold)*10) / 10}
	}
	o.BlockLoad, o.Rope = float64(r.Block), float64(r.Rope)
}
