package bot

import (
	"fmt"

	"heft/calc/rope"
	"heft/calc/tackle"
	"heft/parser"
)

// workLift answers whether a piece can be lifted with what they have.
func (a *answer) workLift() error {
	q := a.question
	res, err := a.weighed()
	if err != nil {
		return err
	}
	l := tackle.Lift{
		Load:   res.Weight.High,
		Tackle: tackle.Tackle{Parts: int(q.Count(parser.Parts)), Efficiency: efficiency(q)},
		Power:  powerOf(q),
	}
	lift, err := tackle.Plan(l)
	if err != nil {
		return err
	}
	if hitch := q.Length(parser.HitchHeight); hitch.High > 0 {
		if res.Rope, err = rope.Needed(hitch.High, l.Parts); err != nil {
			return err
		}
	}
	a.status, a.result = Answered, &res
	a.strain = &strain{line: max(lift.Haul, lift.Holding), block: lift.Block}
	a.tellLift(l, lift)
	a.scene = liftScene(a.voice, a.pictured(), l, lift, q.Length(parser.HitchHeight).High)
	a.tellRope()
	a.figures = func(o *object) {
		o.Lift = &liftObject{
			Ideal: lift.Ideal, Actual: lift.Actual, Haul: float64(lift.Haul), People: lift.PeopleNeeded,
		}
		if lift.Verdict != tackle.PowerUnsaid {
			more := lift.Verdict == tackle.MorePower
			o.Lift.MorePower = &more
		}
		o.BlockLoad = float64(lift.Block)
	}
	return nil
}

// liftObject is a lift as scripts read it.
type liftObject struct {
	Ideal     float64 `json:"advantage_ideal"`
	Actual    float64 `json:"advantage_actual"`
	Haul      float64 `json:"haul_force_n"`
	People    int     `json:"people_needed"`
	MorePower *bool   `json:"needs_more_power,omitempty"`
}

func (a *answer) tellLift(l tackle.Lift, r tackle.Result) {
	a.lines = []string{capital(a.piece()) + fmt.Sprintf(" on %d:1: ", l.Parts) + a.verdict(r) + "."}
	a.tellRemedies(r.Remedies)
	a.tellWeight()
	a.lines = append(a.lines,
		fmt.Sprintf("%d:1 is no more than %s to 1 here: every block takes its share.", l.Parts, trimmed(down1(r.Actual), 1)),
		fmt.Sprintf("Holding still takes %s: friction fights the lift and helps the hold.", a.voice.pull(r.Holding)),
		fmt.Sprintf("Top block sees %s%s, lifting without jerks.", a.voice.load(r.Block), a.deadEnd(r)))
	assumed := fmt.Sprintf("Assumed: %s of the pull passes each block", trimmed(100*l.Efficiency, 0)+"%")
	if l.People > 0 {
		assumed += ", " + a.voice.pullHad(l.PerPerson) + " a person in gloves"
	}
	a.lines = append(a.lines, assumed+", nothing stuck or still attached.")
	a.cautions = append(a.cautions, "Keep the blocks apart: stop before they meet. Nobody under the load.")
	if l.Winch > 0 {
		a.cautions = append(a.cautions, "A winch feels nothing: it can pull past what rope, blocks and tree can take.")
	}
}

func (a *answer) deadEnd(r tackle.Result) string {
	if r.DeadEnd <= 0 {
		return ""
	}
	return ", the dead end " + a.voice.load(r.DeadEnd)
}

// tellRemedies lists what would make it enough, each by itself.
func (a *answer) tellRemedies(m tackle.Remedies) {
	var ways []string
	if m.People > 0 {
		ways = append(ways, people(m.People))
	}
	if m.Parts > 0 {
		ways = append(ways, fmt.Sprintf("%d parts of line", m.Parts))
	}
	if m.Winch > 0 {
		ways = append(ways, "a winch pulling "+a.voice.pull(m.Winch))
	}
	if m.Piece > 0 {
		ways = append(ways, "a piece of "+a.voice.atMost(m.Piece)+" at most")
	}
	if len(ways) > 0 {
		a.problems = append(a.problems, "Enough would be "+list(ways, "or")+".")
	}
}

func people(n int) string {
	if n == 1 {
		return "1 person"
	}
	return fmt.Sprintf("%d people", n)
}

// down1 rounds down to a tenth.
func down1(v float64) float64 { return float64(int(v*10+1e-9)) / 10 }

// low is the lower end of a field: what can be counted on.
func low(q parser.Question, f parser.Field) float64 {
	x, _ := q.Get(f)
	return x.Low
}
