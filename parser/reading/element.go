package reading

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// Element is one meaningful stretch of a message.
type Element struct {
	Start, End int
	Term       *scan.Term // a spelling that is known
	Fig        *Figure    // a number
	Pause      int        // what a reader would stop at: 2 for a comma, 4 for a full stop
	Cross      bool       // "by", between two sizes
	Spent      bool       // it told what a number is, and asks for nothing
}

// Marked says whether an element has one of the marks.
func (e Element) Marked(m scan.Mark) bool { return e.Term != nil && e.Term.Marks&m != 0 }

// LeadsTo says whether the words of an element take the number behind them for
// the field.
func (e Element) LeadsTo(f parser.Field) bool {
	return slices.ContainsFunc(RolesOf(e.Term, f), func(r scan.Role) bool { return r.Side&lexicon.After != 0 })
}

// Plays says whether the element has a role for the field.
func (e Element) Plays(f parser.Field) bool {
	return e.Term != nil && slices.ContainsFunc(e.Term.Roles, func(r scan.Role) bool { return r.Field == f })
}

// Polite says whether a term is a greeting, or says nothing.
func (e Element) Polite() bool { return e.Term != nil && lexicon.Says(e.Term, lexicon.MarkHello) }

// LooksBack says whether the words take the number before them for the field,
// and never the one behind.
func (e Element) LooksBack(f parser.Field) bool {
	back := false
	for _, r := range RolesOf(e.Term, f) {
		if r.Side != lexicon.Before {
			return false
		}
		back = true
	}
	return back
}

// RolesOf are the roles of a term for a field.
func RolesOf(t *scan.Term, f parser.Field) (out []scan.Role) {
	if t == nil {
		return nil
	}
	for _, r := range t.Roles {
		if r.Field == f {
			out = append(out, r)
		}
	}
	return out
}

// Looks says whether the words of an element take the number on that side.
func (e Element) Looks(s scan.Side) bool {
	return e.Term != nil && slices.ContainsFunc(e.Term.Roles, func(r scan.Role) bool { return r.Side&s != 0 })
}

// Piece says whether the element tells of the piece itself.
func (e Element) Piece() bool {
	return e.Term != nil && (e.Term.Shape != "" || e.Term.Tree != nil || e.Term.Condition != "")
}
