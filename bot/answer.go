package bot

import (
	"slices"

	"heft/calc"
	"heft/parser"
)

// answer is a reply in the making.
type answer struct {
	question      parser.Question
	kept, changed []string
	ofJob         []parser.Field // what the channel's job added
	voice         speaker
	status        Status
	result        *calc.Result
	figures       func(*object) // what this kind of answer adds for scripts
	needs         []parser.Field
	lines         []string // without cautions, problems and the reminder
	problems      []string
	cautions      []string
	choices       []Choice
	actions       []Choice
	scene         *Scene
	inTalk        bool        // of a talk that has a piece, and tells of no other
	leaned        bool        // it leans on the question before
	ofPlan        bool        // its load is the heaviest piece of the cut plan before
	tree          tally       // the pieces before this one
	counted       []picked    // the pieces that a whole tree was added up of
	shown         []string    // the working of an answer that tells no weight
	strain        *strain     // the most that it puts on the gear; nil where it says none
	asked         *parser.Ask // what was asked back
	unread        unread
	goesBy        *parser.Ask // the name of several trees that the piece goes by, where it was not told which
	unsaid        *parser.Ask // which of some trees it is, that was asked and not said
	tried         []reading   // what a number in doubt may be
	cutTo         string      // the longest that it says a piece may be, "" where it says none
	named         string      // the job's arborist, where the lines name them
}

// reply closes the answer: from here on nothing can be taken out of it.
func (a answer) reply() Reply {
	if a.scene != nil {
		a.scene.Language = a.voice.language
	}
	o := a.object()
	return Reply{status: a.status, voice: a.voice, choices: a.choices, actions: a.actions,
		lines: a.text(), figures: encode(o), marks: o.marks(), scene: a.scene, named: a.named}
}

// text is every line but the reminder: the headline, what it left out, what
// it kept, what is wrong, the rest.
func (a answer) text() []string {
	lines := slices.Concat(a.lines[:1], a.problems, a.lines[1:], a.cautions)
	if len(a.problems) > 0 && a.lines[0] == a.problems[0] {
		lines = slices.Concat(a.lines, a.problems[1:], a.cautions)
	}
	if len(a.ofJob) > 0 && a.status == Answered {
		lines = slices.Insert(lines, 1, a.voice.say("From the job: %s.", a.voice.and(a.jobsFacts())))
	}
	if said := a.voice.leaning(a.kept, a.changed); said != "" && a.question.Intent != parser.AskJob {
		lines = slices.Insert(lines, 1, said)
	}
	if said := a.leftUnread(); said != "" {
		lines = slices.Insert(lines, 1, said)
	}
	return lines
}

// object is the answer as scripts read it.
func (a answer) object() object {
	o := object{
		Status: a.status, Intent: a.question.Intent, Understood: understood(a.question),
		Kept: a.allKept(), Changed: a.changed, Language: a.voice.tag(),
		Needs: notNil(a.needs), Problems: notNil(a.problems),
		Cautions: append(notNil(a.cautions), a.voice.word(reminder)),
	}
	if said := a.leftUnread(); said != "" {
		o.Problems = append([]string{said}, o.Problems...)
	}
	a.into(&o)
	o.OverLimit, o.Confirm = a.overSaid(), a.toConfirm()
	return o
}

// allKept names what was taken over, from the talk and from the job.
func (a answer) allKept() []string {
	kept := slices.Clone(a.kept)
	for _, f := range a.ofJob {
		kept = append(kept, string(f))
	}
	slices.Sort(kept)
	return kept
}

func notNil[T any](s []T) []T {
	if s == nil {
		return []T{}
	}
	return s
}

// leaning says what a follow-up kept and what it changed.
func (s speaker) leaning(kept, changed []string) string {
	old, fresh := s.and(nouns(s, kept)), s.and(nouns(s, changed))
	switch {
	case len(kept) > 0 && len(changed) > 0:
		return s.say("Kept %s; changed %s.", old, fresh)
	case len(kept) > 0:
		return s.say("Kept %s.", old)
	case len(changed) > 0:
		return s.say("Changed %s.", fresh)
	}
	return ""
}
