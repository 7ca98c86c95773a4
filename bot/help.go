package bot

import "heft/parser"

// help answers a greeting or a call for help. Who asks how one kind of question
// is asked is shown that kind.
func (a *answer) help() {
	a.status = Answered
	v := a.voice
	if a.question.Hello {
		a.lines = []string{v.say("Ready. Ask me about a piece, like “%s”. “Help” shows more.", example(v))}
		return
	}
	if a.generally() {
		return
	}
	if of := asksOf[a.question.Topic]; of != nil {
		a.lines = []string{v.word("Ask it like this, with your own words and numbers:")}
		for _, line := range of {
			a.lines = append(a.lines, v.word(line))
		}
		return
	}
	a.lines = []string{v.word("Ask me about a piece. For example:"),
		v.word("“14 in red oak limb, 22 ft, hitched at 35 ft”"),
		v.word("“how heavy is a white ash log 20 in x 8 ft”"),
		v.word("“600 lb limb, 3 wraps, two on the rope”"),
		v.word("“block load for 600 lb, 60° between the legs”"),
		v.word("“how much rope for a hitch at 45 ft”"),
		v.word("Also: lifts, limbs stood up, swings, drops, balance, cut plans, gear, anchors. “How do I ask for a swing” shows one.")}
}

// asksOf are questions of each kind, whole: nothing is asked back.
var asksOf = map[parser.Intent][]string{
	parser.AskWeight:    {"“how heavy is a white ash log 20 in x 8 ft”", "“14 in red oak limb, 22 ft”"},
	parser.AskLower:     {"“14 in red oak limb, 22 ft, hitched at 35 ft”", "“600 lb limb, 3 wraps, two on the rope”"},
	parser.AskBlockLoad: {"“block load for 600 lb, 60° between the legs”"},
	parser.AskRope:      {"“how much rope for a hitch at 45 ft”"},
	parser.AskLift:      {"“two of us on a 3:1, can we lift 300 lb”"},
	parser.AskRaise:     {"“stand up a 14 in red oak limb 22 ft, 20° above level, tied 12 ft from the cut, block 20 ft above the cut, 2:1”"},
	parser.AskNotch:     {"“notch for a limb 30° above level”"},
	parser.AskSwing:     {"“600 lb limb swing, 15 ft of line out, 8 ft to the side, block at 40 ft”"},
	parser.AskDrop:      {"“300 lb log drops 3 ft, 60 ft of rope, rope breaks at 16,000 lb”"},
	parser.AskCutPlan:   {"“20 in red oak log, keep each piece under 500 lb”"},
	parser.AskGear:      {"“600 lb limb, is my rope strong enough, it breaks at 16,000 lb”"},
	parser.AskAnchor:    {"“anchor limb white oak 10 in, 300 lb 2 ft out”"},
	parser.AskBalance:   {"“where does a 14 in red oak limb 22 ft balance”"},
}
