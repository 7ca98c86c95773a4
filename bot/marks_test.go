package bot_test

import (
	"testing"

	"heft/bot"
)

// What a reply says to those who look after it is what its entry says when it
// is read back from the journal.
func TestAReplyIsMarkedLikeItsEntry(t *testing.T) {
	desk := newDesk(t)
	for text, want := range map[string]struct{ over, confirm, forAll bool }{
		"14 in red oak limb 22 ft, hitched at 35 ft":               {},
		"14 in red oak limb 22 ft":                                 {},
		"rama de roble rojo de 14 pulgadas y 22 pies":              {},
		"600 lb limb, 2 wraps, limit is 500 lb":                    {over: true, confirm: true},
		"lift 800 lb, 3:1":                                         {confirm: true},
		"600 lb log, limit is 500 lb\n300 lb log":                  {over: true, confirm: true},
		"300 lb log, limit is 500 lb\n600 lb log":                  {},
		"300 lb log, limit is 500 lb\n600 lb log, limit is 500 lb": {over: true, confirm: true},
		"job: limit 600 lb":                                        {forAll: true},
		"power line, 14 in red oak limb 22 ft":                     {},
	} {
		reply, entry, _ := desk.Answer(event(text), bot.Turn{})
		if reply.OverLimit() != want.over || reply.ToConfirm() != want.confirm || reply.ForAll() != want.forAll {
			t.Errorf("%q: the reply is over the limit %v, to be confirmed %v, for all %v", text, reply.OverLimit(), reply.ToConfirm(), reply.ForAll())
		}
		if entry.OverLimit() != want.over || entry.ToConfirm() != want.confirm {
			t.Errorf("%q: the entry is over the limit %v, to be confirmed %v", text, entry.OverLimit(), entry.ToConfirm())
		}
		for name, old := range map[string]bot.Reply{"late": bot.Late(entry, asked), "kept": bot.Kept(entry, asked.Location())} {
			if old.OverLimit() != want.over || old.ToConfirm() != want.confirm {
				t.Errorf("%q, %s: over the limit %v, to be confirmed %v", text, name, old.OverLimit(), old.ToConfirm())
			}
		}
	}
}
