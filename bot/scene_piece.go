package bot

import (
	"heft/calc/tackle"
	"heft/calc/unit"
	"heft/parser"
)

// pictured is the piece as a picture shows it.
type pictured struct {
	Name   string
	Weight unit.Mass   // to plan on
	Length unit.Length // 0 where it was not said
	Butt   unit.Length // across; 0 where it was not said
	Log    bool        // it hardly tapers
}

// pictured is the piece of the answer.
func (a *answer) pictured() pictured {
	q := a.question
	p := pictured{Name: capital(a.piece()), Length: q.Length(parser.Length).High}
	p.Log = q.Shape != nil && q.Shape.Value == parser.Log
	if a.result != nil {
		p.Weight = a.result.Weight.High
	}
	for _, f := range []parser.Field{parser.ButtDiameter, parser.Diameter, parser.MidDiameter, parser.TipDiameter} {
		if q.Has(f) {
			p.Butt = q.Length(f).High
			break
		}
	}
	return p
}

// across is how thick the piece is drawn: as it is, or in proportion where
// that was not said.
func (p pictured) across(length float64) float64 {
	if p.Butt > 0 {
		return float64(p.Butt)
	}
	const stout = 0.06
	return stout * length
}

// taper is how thick the tip is drawn against the butt.
func (p pictured) taper() float64 {
	if p.Log {
		return 0.92
	}
	return 0.4
}

// plan says the weight to plan on.
func (p pictured) plan(v speaker) string { return v.say("Plan on %s", v.heavy(p.Weight)) }

// verdictWord says in a word whether the pull at hand is enough.
func (s speaker) verdictWord(v tackle.Verdict) string {
	switch v {
	case tackle.Enough:
		return s.word("ENOUGH PULL")
	case tackle.Marginal:
		return s.word("MARGINAL")
	case tackle.MorePower:
		return s.word("MORE POWER")
	}
	return ""
}

// pulling says what the haul takes, and what there is for it.
func (s speaker) pulling(r tackle.Result) string {
	if r.Have > 0 {
		takes, has := s.against(r.Haul, r.Have)
		return s.say("Pull %s\nyou have %s", takes, has)
	}
	return s.say("Pull %s\n%s", s.pull(r.Haul), s.people(r.PeopleNeeded))
}

// share is a load's part of the largest.
func share(load, largest unit.Force) float64 { return float64(load / max(load, largest, 1)) }
