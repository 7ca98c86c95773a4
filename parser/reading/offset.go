package reading

import (
	"strings"

	"heft/parser/scan"
)

// Word is an element as it was typed, folded; "" where it is no word.
func (rd *Reading) Word(e Element) string {
	if e.Term == nil {
		return ""
	}
	typed := scan.Fold(rd.Text[e.Start:e.End])
	if strings.IndexFunc(typed, scan.Gap) < 0 {
		return typed
	}
	at := [2]int{e.Start, e.End}
	if rd.spelled[at] == "" {
		if rd.spelled == nil {
			rd.spelled = map[[2]int]string{}
		}
		rd.spelled[at] = strings.Join(scan.SplitWords(typed), " ")
	}
	return rd.spelled[at]
}
