package lexicon

import (
	"fmt"
	"sync"

	"heft/parser/language"
	"heft/parser/scan"
)

// readLanguages reads the word files, all at the same time: a crew waits for its
// first answer as long as the longest takes. What they say is put together in
// their order, so that it never depends on which was read first.
func readLanguages(languages []language.Language) (*Lexicon, error) {
	parts, errs := make([]*Lexicon, len(languages)), make([]error, len(languages))
	var reading sync.WaitGroup
	for i, l := range languages {
		reading.Go(func() { parts[i], errs[i] = readLanguage(l, i+1) })
	}
	reading.Wait()
	for i, err := range errs {
		if err != nil {
			return nil, fmt.Errorf("%s.txt %w", languages[i].Tag, err)
		}
	}
	whole := parts[0]
	for _, part := range parts[1:] {
		whole.add(part)
	}
	return whole, nil
}

// readLanguage reads one word file by itself.
func readLanguage(l language.Language, slot int) (*Lexicon, error) {
	lx := emptyLexicon()
	lx.now = newDialect(l.Tag, slot)
	lx.dialects = []*scan.Dialect{lx.now}
	var err error
	if lx.now.Spoken, err = readTalk(l.Talk); err != nil {
		return nil, err
	}
	for _, form := range []bool{true, false} {
		for _, line := range l.Words {
			if isForm(line.Text) != form {
				continue // what spellings are made of comes first
			}
			if err := lx.addLine(line.Text); err != nil {
				return nil, fmt.Errorf("line %d: %w", line.Number, err)
			}
		}
	}
	return lx, nil
}

// add takes over what another word file says.
func (lx *Lexicon) add(part *Lexicon) {
	lx.dialects = append(lx.dialects, part.dialects...)
	for w, langs := range part.words {
		lx.words[w] |= langs
	}
	for label, spellings := range part.labels {
		lx.keepLabel(label, spellings)
	}
	for name, patterns := range part.patterns {
		lx.patterns[name] = append(lx.patterns[name], patterns...)
	}
	lx.Root.join(part.Root)
}

// join takes over what another node says, and all that follows it. The two are of
// different languages, so that no term of one is the other's.
func (n *node) join(other *node) {
	n.langs |= other.langs
	n.terms = append(n.terms, other.terms...)
	for _, c := range other.next {
		if mine := n.After(c.word); mine != nil {
			mine.join(c)
			continue
		}
		n.next = append(n.next, c)
		if n.index != nil {
			n.index[c.word] = c
		}
	}
}
