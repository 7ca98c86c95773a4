package bot

import "heft/parser"

// "Wraps for 450", and before anybody says whether that is pounds: "block load?". The piece
// is told, and only its unit is open: that is asked again, with what the new question comes
// to whichever it is, and no other piece is asked for.

// unitAgain asks once more what the number of the message before is, where the next one asks
// something that lacks nothing but it. False where it lacks more.
func (d *Desk) unitAgain(a *answer, ev Event, before Turn, said, q parser.Question, ask *parser.Ask) (Turn, bool) {
	waits := bareNumber(before.pending) && len(before.choices) > 0
	if ask.Kind != parser.Missing || !a.leaned || ev.tried > 0 || !waits || len(q.Quantities) > 0 || q.Species != nil || q.Obstacle != nil {
		return Turn{}, false
	}
	turn := Turn{question: said, known: true, pending: before.pending, which: before.which, open: before.openWith(q)}
	ev.tried, ev.lent = deepTried, true
	var all []reading
	for _, c := range before.choices {
		if r := d.try(reading{label: c.Label, text: c.Label}, ev, turn); r.comes != "" {
			all = append(all, r)
		}
	}
	if len(all) < len(before.choices) {
		return Turn{}, false
	}
	a.status, a.asked, a.needs = Needs, before.pending, before.pending.Fields
	a.tellReadings(before.pending, all)
	a.lines[0], a.tried = a.unitHint(before.pending), nil
	return turn.offering(a.choices, turn), true
}
