package bot

import (
	"math"

	"heft/calc"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

// density is what a cubic metre of a tree's wood weighs: a log of just so much, weighed as
// every log is.
func density(q parser.Question) (piece.Weight, error) {
	const across = 1.0 // m; any thickness tells the same
	log := pieceOf(q)
	log.Shape, log.Diameter = piece.Log, unit.Exactly(unit.Length(across))
	log.Length = unit.Exactly(unit.Length(4 / (math.Pi * across * across)))
	res, err := calc.Work(calc.Job{Piece: &log})
	if err != nil {
		return piece.Weight{}, err
	}
	return res.Weight, nil
}

// workVolume tells what a tree's wood weighs by its volume: that of a log of just so
// much, as every log is weighed.
func (a *answer) workVolume() error {
	w, err := density(a.question)
	if err != nil {
		return err
	}
	v := a.voice
	a.status = Answered
	a.lines = append(v.byVolume(*a.question.Species, w),
		v.say("For a piece tell me its diameter and length, like “%s”.", example(v)))
	return nil
}

// byVolume says what a tree's wood weighs by its volume.
func (s speaker) byVolume(tree parser.Said[parser.Species], w piece.Weight) []string {
	name, _ := tree.Value.In(s.tag())
	light, likely, heavy := perVolume(w.Low, math.Floor), perVolume(w.Likely, math.Round), perVolume(w.High, math.Ceil)
	return []string{s.say("%s: plan on %s lb a cubic foot, %s kg a cubic metre: solid wood with its bark.", capital(name), heavy[0], heavy[1]),
		s.say("%s–%s lb a cubic foot, likely %s.", light[0], heavy[0], likely[0])}
}

// compareWoods tells which of two trees has the heavier wood, and what each weighs by its
// volume. What is likely and the heavy end have to agree on it.
func (a *answer) compareWoods() error {
	v, first, second := a.voice, a.question, a.question
	second.Species = a.question.Against
	w, err := density(first)
	if err != nil {
		return err
	}
	x, err := density(second)
	if err != nil {
		return err
	}
	heavier := first
	if x.Likely > w.Likely {
		heavier = second
	}
	name, _ := heavier.Species.Value.In(v.tag())
	line := v.say("%s is the heavier as a rule. One tree of it may still be lighter: plan on the heavy end of each.", capital(name))
	const near = 0.05 // of the likely weight: trees of one kind differ by far more
	alike := math.Abs(float64(x.Likely-w.Likely)) < near*float64(w.Likely)
	if alike || (x.Likely > w.Likely) != (x.High > w.High) {
		line = v.word("Neither is surely the heavier: plan on the heavy end of each.")
	}
	a.lines = append([]string{line}, append(v.byVolume(*first.Species, w), v.byVolume(*second.Species, x)...)...)
	if a.question.Condition != nil {
		a.lines = append(a.lines, v.word(general[parser.TopicGreen][0]))
	}
	return nil
}

// perVolume says the mass of a cubic metre in pounds a cubic foot and in kilograms.
func perVolume(m unit.Mass, round func(float64) float64) [2]string {
	const tens = 10
	return [2]string{trimmed(round(m.Pounds()*float64(unit.CubicFoot)), 0), grouped(round(float64(m)/tens) * tens)}
}
