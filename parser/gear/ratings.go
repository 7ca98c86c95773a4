package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Field names the strength of a part.
func Field(p scan.Part, s scan.Strength) parser.Field {
	return parser.Field(string(p) + "_" + string(s) + "_n")
}

// Rates says whether a number can be a strength: a mass or a force, or one
// whose unit was not said.
func Rates(f *reading.Figure) bool {
	return f.Dim == parser.DimMass || f.Dim == parser.DimForce || f.Dim == parser.DimCount && f.Low >= 100
}

// StrengthBeside finds the word for a strength next to a number whose
// neighbours are given. The one before it goes first, unless it belongs to
// the number before.
func StrengthBeside(rd *reading.Reading, left, right int) (scan.Strength, int) {
	passed := false // a part: "carga de trabajo de la eslinga 4,000 lb"
	for j := left; j >= 0; j-- {
		e := rd.Elems[j]
		if s := Strength(e); s != "" {
			if e.Spent {
				break
			}
			return s, j
		}
		if !passed && Part(e) != "" && rd.At(rd.Past(j-1, -1, lexicon.MarkArticle)).Marked(lexicon.MarkIs) {
			passed = true
			continue
		}
		if passed && e.Marked(lexicon.MarkArticle) {
			continue
		}
		about := e.Term != nil && e.Term.Note == "about"
		if !e.Marked(lexicon.MarkIs|lexicon.MarkRating|lexicon.MarkAdjective|lexicon.MarkAt) && !rd.Colon(j) && !about {
			break
		}
	}
	if rd.Cued(rd.At(right), lexicon.CueWorking) && rd.EndsBreath(right+1) {
		return lexicon.Working, right // "rope good for 1,500 lb working"
	}
	j := rd.Past(right, +1, lexicon.MarkIs|lexicon.MarkArticle)
	if Part(rd.At(j)) != "" && Strength(rd.At(j)) == "" {
		j++ // "20,000 lb block wll"
	}
	if s := Strength(rd.At(j)); s != "" && !rd.At(j).Spent && !ofNext(rd, left, j) {
		return s, j
	}
	return "", -1
}

// ofNext says whether the word for a strength at j, behind a number whose left
// neighbour is given, leads to a number of its own: "log weighs 900 lb rope
// breaks at 6000".
func ofNext(rd *reading.Reading, left, j int) bool {
	next := rd.Forth(j + 1)
	if k := rd.Past(j+1, +1, lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkArticle); k > j+1 && Part(rd.At(k)) != "" {
		next = rd.Forth(k + 1) // "carga de rotura de la cuerda 6000 libras"
	}
	if fig := rd.At(next).Fig; fig == nil || !Rates(fig) || rd.At(next+1).Piece() {
		return false
	}
	if (rd.TermAt(left).Rated || rd.Cued(rd.At(left), lexicon.CueStamped)) && rd.EndsBreath(next+1) {
		return true // "rated 30 kN WLL 10 kN", "says 30 kN WLL 10 kN"
	}
	between := Part(rd.At(j-1)) != "" && rd.At(left+1) != rd.At(j-1)
	return between || next > j+1 || rd.TermAt(j).Leads || rd.At(left).Looks(lexicon.After) || rd.At(rd.Past(left, -1, lexicon.MarkIs)).Looks(lexicon.After)
}

// Strength is which of the two strengths on a label a word names, if any.
func Strength(e reading.Element) scan.Strength {
	if e.Term == nil {
		return ""
	}
	return e.Term.Strength
}

// Part is the kind of gear that a word names, if any.
func Part(e reading.Element) scan.Part {
	if e.Term == nil {
		return ""
	}
	return e.Term.Part
}

func other(s scan.Strength) scan.Strength {
	if s == lexicon.Breaking {
		return lexicon.Working
	}
	return lexicon.Breaking
}

// Both are the fields of both strengths of a kind of gear.
func Both(p scan.Part) []parser.Field {
	return []parser.Field{Field(p, lexicon.Working), Field(p, lexicon.Breaking)}
}
