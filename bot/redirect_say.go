package bot

import (
	"math"
	"slices"

	"heft/calc"
	"heft/calc/redirect"
	"heft/calc/unit"
	"heft/parser"
)

// workBlockLoad answers what the blocks of a rope's path carry.
func (a *answer) workBlockLoad() error {
	redirected := slices.ContainsFunc(a.question.Notes, parser.Redirecting)
	if !redirected && !a.question.Has(parser.Turn, parser.LimbAngle) {
		return a.workLower()
	}
	res, err := a.weighed()
	if err != nil {
		return err
	}
	p, err := pathOf(a.question, res.Weight.High.Weight())
	if err != nil {
		return err
	}
	if p.plumb {
		res.Block = p.still[0].Force
	}
	a.status, a.result, a.strain = Answered, &res, p.strain()
	a.figures = func(o *object) { o.Redirects = p.objects() }
	a.lines, a.shown = []string{a.pathHead(p)}, p.working(a.voice)
	a.tellGentler()
	a.tellWeight()
	a.tellPath(p)
	a.tellDrum()
	a.tellAssumed()
	a.cautions = append(a.cautions, a.voice.say("Sling every block so that it can line up with its pull. Nobody in the bight. A piece that drops loads every block far more."))
	a.scene = redirectScene(a.voice, a.pictured(), p.chain, p.still, p.names(a.voice))
	if !p.plumb {
		a.scene.Notes = append(a.scene.Notes, a.voice.say("Only the turn is known: turn the view as your rope runs."))
	}
	return nil
}

// working shows what each block carries with the load held: both legs pull alike.
func (p path) working(v speaker) (out []string) {
	names := p.names(v)
	for i, l := range p.still {
		if math.Abs(float64(l.In-l.Out)) < 1 {
			out = append(out, v.say("%s, held: 2 × %s × sin(%s° ÷ 2) = %s.", capital(names[i]), v.exact(l.In.Held()), trimmed(l.Turn.Degrees(), 1), v.exact(l.Force.Held())))
		}
	}
	return out
}

// strain is the most that any leg of the rope and any block carries: lifting.
func (p path) strain() *strain {
	var s strain
	for _, l := range p.lifting {
		s.line, s.block = max(s.line, l.In, l.Out), max(s.block, l.Force)
	}
	return &s
}

// pathHead is the line that serves alone: what each block carries.
func (a *answer) pathHead(p path) string {
	v, names := a.voice, p.names(a.voice)
	if len(p.still) == 1 {
		return v.say("%s: the %s sees %s held, %s lifting, rope turned %s°.", capital(a.piece()), names[0],
			v.load(p.still[0].Force), v.heavy(p.lifting[0].Force.Held()), trimmed(p.still[0].Turn.Degrees(), 1))
	}
	var each []string
	for i, l := range p.still {
		each = append(each, v.say("%s %s", names[i], v.heavy(l.Force.Held())))
	}
	return v.say("%s, held: %s.", capital(a.piece()), v.and(each))
}

// names are what the crew calls the blocks.
func (p path) names(s speaker) []string {
	var out []string
	for _, b := range p.bends {
		out = append(out, s.word(blockNoun[b.name]))
	}
	return out
}

var blockNoun = map[string]string{
	parser.TopBlock: "top block", parser.RedirectBlock: "redirect", parser.BaseBlock: "base block",
	parser.NaturalCrotch: "natural crotch", parser.AnyBlock: "block", "": "block",
}

// tellPath says of every block what it carries, and which way it is pulled.
func (a *answer) tellPath(p path) {
	v := a.voice
	for i, l := range p.still {
		a.lines = append(a.lines, v.say("%s, %s° turn: %s held, %s lowering, %s lifting; pulled %s.",
			capital(p.names(v)[i]), trimmed(l.Turn.Degrees(), 1), v.load(l.Force), v.load(p.lowering[i].Force),
			v.load(p.lifting[i].Force), v.word(directions[p.direction(i)])))
	}
	a.lines = append(a.lines, v.say("A block where the rope hardly turns sees almost nothing; turned right back, double the rope's pull."))
	a.tellOnLimb(p)
	a.tellTurnMore(p)
	if p.plumb {
		a.lines = append(a.lines, v.say("Assumed: the load hangs plumb, the path lies in one plane, and the rope leads on toward the drum."))
	}
	share := v.say("%s%%", trimmed(100*p.bends[0].sheave.Efficiency, 0))
	if p.plumb {
		a.lines = append(a.lines, v.say("Friction: %s of the pull passes where the rope is turned right back.", share))
	} else {
		a.lines = append(a.lines, v.say("Friction: %s of the pull passes where the rope is turned right back; lifting, a top block before it is counted in.", share))
	}
}

// tellOnLimb splits the first block's load along and across the limb that it
// hangs on.
func (a *answer) tellOnLimb(p path) {
	x, ok := a.question.Get(parser.LimbAngle)
	if !ok {
		return
	}
	if !p.plumb {
		a.lines = append(a.lines, a.voice.say("How it pulls on its limb hangs on where its legs lead: tell me the turn at the top block too."))
		return
	}
	angle := unit.Angle(x.Low) * unit.Degree
	on, err := p.still[0].On(redirect.Direction{FromDown: math.Pi/2 + angle, Toward: math.Pi})
	if err != nil {
		a.refuse(a.problem(err))
		return
	}
	v := a.voice
	across, at := v.load(on.Across), trimmed(x.Low, 1)
	switch along := v.load(unit.Force(math.Abs(float64(on.Along)))); {
	case math.Abs(float64(on.Along)) < 0.01*float64(on.Across):
		a.lines = append(a.lines, v.say("On a limb %s° above level, pointing away from the drum, all of it bends the limb.", at))
	case on.Across < 0.01*unit.Force(math.Abs(float64(on.Along))) && on.Along < 0:
		a.lines = append(a.lines, v.say("On a limb %s° above level, pointing away from the drum, all of it pushes in along the limb. Compression.", at))
	case on.Pushes():
		a.lines = append(a.lines, v.say("On a limb %s° above level, pointing away from the drum: %s push in along it, %s bend it. Mostly compression.", at, along, across))
	case on.Along < 0:
		a.lines = append(a.lines, v.say("On a limb %s° above level, pointing away from the drum: %s bend it, %s push in along it. Mostly bending.", at, across, along))
	default:
		a.lines = append(a.lines, v.say("On a limb %s° above level, pointing away from the drum: %s bend it, %s pull it outward.", at, across, along))
	}
}

// tellTurnMore says what ten degrees more turn cost where they cost most.
func (a *answer) tellTurnMore(p path) {
	const more = 10 * unit.Degree
	worst, cost, then := -1, unit.Force(0), unit.Force(0)
	for i, l := range p.still {
		at := 2 * l.In * unit.Force(math.Sin(float64(min(l.Turn+more, math.Pi))/2))
		if at-l.Force > cost {
			worst, cost, then = i, at-l.Force, at
		}
	}
	if worst >= 0 && p.still[worst].Turn+more <= math.Pi {
		a.lines = append(a.lines, a.voice.say("Ten degrees more turn at the %s: %s.", p.names(a.voice)[worst], a.voice.load(then)))
	}
}

// redirectObject is one block of a rope's path as scripts read it.
type redirectObject struct {
	Block     string  `json:"block"`
	Load      float64 `json:"load_n"` // standing still
	Lowering  float64 `json:"lowering_n,omitempty"`
	Lifting   float64 `json:"lifting_n"`
	Turn      float64 `json:"turn_deg"`
	Direction string  `json:"direction"`
}

func (p path) objects() []redirectObject {
	var out []redirectObject
	for i, l := range p.still {
		out = append(out, redirectObject{
			Block: blockNoun[p.bends[i].name], Load: float64(l.Force), Lowering: float64(p.lowering[i].Force), Lifting: float64(p.lifting[i].Force),
			Turn: tidy(l.Turn.Degrees()), Direction: directions[p.direction(i)],
		})
	}
	return out
}

// turnsSaid lists how far the rope was said to turn, and where.
func turnsSaid(q parser.Question) []map[string]any {
	var out []map[string]any
	for _, x := range q.Quantities {
		if x.Field != parser.Turn {
			continue
		}
		said := map[string]any{"turn_deg": tidy(x.Low)}
		if x.Low != x.High {
			said["turn_deg"] = [2]float64{tidy(x.Low), tidy(x.High)}
		}
		if x.At != "" {
			said["block"] = blockNoun[x.At]
		}
		out = append(out, said)
	}
	return out
}

// alsoPath adds the blocks of the rope's path to the answer about a lower.
func (a *answer) alsoPath(res calc.Result) error {
	if !a.question.Has(parser.Turn) {
		if slices.ContainsFunc(a.question.Notes, parser.Redirecting) {
			a.lines = append(a.lines, a.voice.say("NOT in these figures: the redirect. Tell me how far the rope turns there, like “rope turns 30° at the redirect”."))
		}
		return nil
	}
	p, err := pathOf(a.question, res.Weight.High.Weight())
	if err != nil {
		return err
	}
	a.tellPath(p)
	a.figures = func(o *object) {
		a.ropeEnd(o)
		o.Redirects = p.objects()
	}
	return nil
}
