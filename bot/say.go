package bot

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"

	"heft/calc/unit"
)

// Numbers are spoken the way a crew speaks: few digits, and where a load is
// rounded it is rounded up, where a capacity or a low end is, down.

// upTo rounds up to the step that a crew would speak in.
func upTo(v float64) float64 { return max(0, math.Ceil(v/step(v)-1e-9)*step(v)) }

// downTo rounds down to the same step.
func downTo(v float64) float64 { return math.Floor(v/step(v)+1e-9) * step(v) }

func step(v float64) float64 {
	switch v = math.Abs(v); {
	case v < 20:
		return 1
	case v < 200:
		return 5
	case v < 1000:
		return 10
	case v < 10000:
		return 50
	}
	return 100
}

// grouped writes a whole number with commas: 1,750.
func grouped(v float64) string {
	return inThousands(strconv.FormatFloat(v, 'f', 0, 64))
}

// inThousands sets the thousands of a whole number apart.
func inThousands(s string) string {
	for i := len(s) - 3; i > 0 && s[i-1] != '-'; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
}

// trimmed writes a number to at most n decimals, none where they are zero. Nought that
// was rounded from below it has no sign.
func trimmed(v float64, n int) string {
	s := strconv.FormatFloat(v+0, 'f', n, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

// speaker says quantities in one system first, and all of it in one language.
type speaker struct {
	metric   bool
	language string // its tag; empty is English
}

func (s speaker) unitOfMass(m unit.Mass) (float64, string) {
	if s.metric {
		return float64(m), " kg"
	}
	return m.Pounds(), " lb"
}

// heavy says a mass, rounded up.
func (s speaker) heavy(m unit.Mass) string {
	v, u := s.unitOfMass(m)
	return grouped(upTo(v)) + u
}

// masses says a range of masses: the low end rounded down, the high end up.
func (s speaker) masses(low, high unit.Mass) string {
	a, u := s.unitOfMass(low)
	b, _ := s.unitOfMass(high)
	if low == high {
		return grouped(upTo(b)) + u
	}
	return grouped(downTo(a)) + "–" + grouped(upTo(b)) + u
}

// told says masses as a crew told them, to the pound or the kilogram.
func (s speaker) told(low, high unit.Mass) string {
	a, u := s.unitOfMass(low)
	b, _ := s.unitOfMass(high)
	if low, high := grouped(math.Floor(a+1e-9)), grouped(math.Ceil(b-1e-9)); a != b && low != high {
		return low + "–" + high + u
	}
	return grouped(math.Ceil(b-1e-9)) + u
}

// other speaks the other system.
func (s speaker) other() speaker {
	s.metric = !s.metric
	return s
}

// load says a force as a crew feels it, rounded up, with kilonewtons for the
// gear's label.
func (s speaker) load(f unit.Force) string {
	kn := trimmed(max(0, math.Ceil(float64(f)/100-1e-9))/10, 1) + " kN"
	if s.metric {
		return kn + " (" + s.heavy(f.Held()) + ")"
	}
	return s.heavy(f.Held()) + " (" + kn + ")"
}

// pull says a force at the hand, rounded up.
func (s speaker) pull(f unit.Force) string { return s.heavy(f.Held()) }

// across says a thickness.
func (s speaker) across(r unit.Range[unit.Length]) string {
	if s.metric {
		return span(trimmed(float64(r.Low/unit.Centimetre), 1), trimmed(float64(r.High/unit.Centimetre), 1)) + " cm"
	}
	return span(trimmed(r.Low.Inches(), 1), trimmed(r.High.Inches(), 1)) + " in"
}

// along says a length or a height.
func (s speaker) along(r unit.Range[unit.Length]) string {
	if s.metric {
		return span(trimmed(float64(r.Low), 2), trimmed(float64(r.High), 2)) + " m"
	}
	if inches := r.Low.Inches(); r.Single() {
		feet := math.Floor(inches/12 + 1e-6)
		rest := inches - 12*feet
		if whole := math.Round(rest); whole >= 1 && math.Abs(rest-whole) < 1e-6 {
			return fmt.Sprintf("%.0f ft %.0f in", feet, whole)
		}
	}
	return span(trimmed(r.Low.Feet(), 1), trimmed(r.High.Feet(), 1)) + " ft"
}

// ropeNeeded says a length of rope, rounded up to what a crew would lay out.
func (s speaker) ropeNeeded(l unit.Length) string {
	if s.metric {
		return grouped(math.Ceil(float64(l)-1e-9)) + " m"
	}
	return grouped(math.Ceil(l.Feet()/5-1e-9)*5) + " ft"
}

func span(a, b string) string {
	if a == b {
		return a
	}
	return a + "–" + b
}

// wraps says wraps in halves: 4½.
func wraps(v float64) string {
	whole, part := math.Modf(v)
	switch {
	case part != 0.5:
		return trimmed(v, 2)
	case whole == 0:
		return "½"
	}
	return strconv.Itoa(int(whole)) + "½"
}

// turns says wraps with their noun.
func (s speaker) turns(v float64) string {
	if v <= 1 {
		return s.say("%s wrap", wraps(v))
	}
	return s.say("%s wraps", wraps(v))
}

// quoteLength is how much of somebody's words is given back.
const quoteLength = 40

// quote gives back the crew's words: short, on one line, without a control
// character or a quotation mark of its own.
func quote(words string) string {
	var b strings.Builder
	n := 0
	for _, r := range words {
		if n++; n > quoteLength {
			b.WriteRune('…')
			break
		}
		switch {
		case unicode.IsSpace(r):
			b.WriteRune(' ')
		case unicode.IsPrint(r) && !strings.ContainsRune("“”`", r):
			b.WriteRune(r)
		}
	}
	return "“" + b.String() + "”"
}

// and joins words as a person would: a, b and c.
func (s speaker) and(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	n := len(words) - 1
	return s.say("%s and %s", strings.Join(words[:n], ", "), words[n])
}

// or joins words of which one holds: a, b or c.
func (s speaker) or(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	n := len(words) - 1
	return s.say("%s or %s", strings.Join(words[:n], ", "), words[n])
}

// clauses make one sentence of several that each say a thing by themselves.
func clauses(said ...string) string { return strings.Join(said, ", ") + "." }

// numbered is the line of a list.
func numbered(i int, line string) string { return count(i+1) + ". " + line }

// capital starts a sentence.
func capital(s string) string {
	r := []rune(s)
	if len(r) == 0 {
		return s
	}
	r[0] = unicode.ToUpper(r[0])
	return string(r)
}

// atMost says a mass that must not be passed, rounded down.
func (s speaker) atMost(m unit.Mass) string {
	v, u := s.unitOfMass(m)
	return grouped(downTo(v)) + u
}

// nearly makes up for a unit that falls just short of a round figure: 200 N is 44.96 lb,
// which nobody feels from 45.
const nearly = 1.001

// pullHad says a pull that is there, rounded down.
func (s speaker) pullHad(f unit.Force) string { return s.atMost(f.Held() * nearly) }

// against says the pull that something takes and the one that is there. Where the rounding
// would turn them round, "it takes 45 lb, you have 40 lb" of what is enough, both are told
// as finely as it needs.
func (s speaker) against(need, have unit.Force) (takes, has string) {
	n, u := s.unitOfMass(need.Held())
	h, _ := s.unitOfMass(have.Held())
	if n > h || upTo(n) <= downTo(h*nearly) {
		return s.pull(need), s.pullHad(have)
	}
	return finer(n, h, u)
}

// within says a weight that is planned and the limit that it keeps to, as against does:
// "stay under 135 kg, plan on 140 kg" would contradict itself.
func (s speaker) within(planned, limit unit.Mass) (weight, most string) {
	w, u := s.unitOfMass(planned)
	m, _ := s.unitOfMass(limit)
	if w > m || upTo(w) <= downTo(m) {
		return s.heavy(planned), s.atMost(limit)
	}
	return finer(w, m, u)
}

// finer says two figures to as many digits as keep the first no larger than the second.
func finer(n, h float64, u string) (less, more string) {
	const most = 2
	for digits := 0; digits < most; digits++ {
		fine := math.Pow10(digits)
		if up, down := math.Ceil(n*fine-1e-9)/fine, math.Floor(h*fine+1e-9)/fine; up <= down {
			return trimmed(up, digits) + u, trimmed(down, digits) + u
		}
	}
	return trimmed(n, most) + u, trimmed(h, most) + u
}

// alongUp and alongDown say a length to a tenth, rounded up or down.
func (s speaker) alongUp(l unit.Length) string   { return s.tenth(l, math.Ceil, -1e-9) }
func (s speaker) alongDown(l unit.Length) string { return s.tenth(l, math.Floor, 1e-9) }

// wholeUp and wholeDown say a height to the whole foot or metre.
func (s speaker) wholeUp(l unit.Length) string   { return s.whole(l, math.Ceil, -1e-9) }
func (s speaker) wholeDown(l unit.Length) string { return s.whole(l, math.Floor, 1e-9) }

// heightAbove and heightBelow are the next whole foot, or half metre, from a height
// on: what is told of a block is planned as it is told.
func (s speaker) heightAbove(h unit.Length) unit.Length { return s.height(h, math.Ceil, -1e-9) }
func (s speaker) heightBelow(h unit.Length) unit.Length { return s.height(h, math.Floor, 1e-9) }

func (s speaker) height(h unit.Length, round func(float64) float64, slack float64) unit.Length {
	step := unit.Foot
	if s.metric {
		step = 0.5
	}
	return unit.Length(round(float64(h/step)+slack)) * step
}

func (s speaker) whole(l unit.Length, round func(float64) float64, slack float64) string {
	if s.metric {
		return trimmed(max(0, round(float64(l)+slack)), 0) + " m"
	}
	return trimmed(max(0, round(l.Feet()+slack)), 0) + " ft"
}

func (s speaker) tenth(l unit.Length, round func(float64) float64, slack float64) string {
	if s.metric {
		return trimmed(round(float64(l)*10+slack)/10, 1) + " m"
	}
	return trimmed(round(l.Feet()*10+slack)/10, 1) + " ft"
}
