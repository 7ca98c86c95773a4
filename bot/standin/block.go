package standin

import (
	"encoding/json"
	"fmt"
)

// Block is one block of a message or a view, as the app sent it.
type Block struct {
	Type      string    `json:"type"`
	ID        string    `json:"block_id"`
	Text      *Text     `json:"text"`
	Fields    []Text    `json:"fields"`
	Elements  []Element `json:"elements"`
	Accessory *Element  `json:"accessory"`
	Element   *Element  `json:"element"` // of an input
	Label     *Text     `json:"label"`
	Hint      *Text     `json:"hint"`
	Optional  bool      `json:"optional"`
	Title     *Text     `json:"title"` // of an image
	ImageURL  string    `json:"image_url"`
	AltText   string    `json:"alt_text"`
	File      *FileRef  `json:"slack_file"`

	raw map[string]json.RawMessage
}

// FileRef names a file of the workspace that a block shows.
type FileRef struct {
	ID string `json:"id"`
}

// Text is a text object.
type Text struct {
	Type string `json:"type"` // plain_text or mrkdwn
	Text string `json:"text"`
}

// Plain says whether no markup is read in the text.
func (t Text) Plain() bool { return t.Type == "plain_text" }

// Shown is the text as a person sees it, markup left as it is.
func (t Text) Shown() string { return entities.Replace(t.Text) }

// Element is a part of a block: a button, a select, an input, an image, or
// a text in a context block.
type Element struct {
	Type        string   `json:"type"`
	ActionID    string   `json:"action_id"`
	Text        *Text    `json:"-"` // of a button; a context's text too
	Value       string   `json:"value"`
	URL         string   `json:"url"`
	Style       string   `json:"style"`
	Label       string   `json:"accessibility_label"`
	Placeholder *Text    `json:"placeholder"`
	Options     []Option `json:"options"`
	Initial     string   `json:"initial_value"`
	Chosen      *Option  `json:"initial_option"`
	Multiline   bool     `json:"multiline"`
	ImageURL    string   `json:"image_url"`
	AltText     string   `json:"alt_text"`
	File        *FileRef `json:"slack_file"`
	Confirm     *Confirm `json:"confirm"`

	raw map[string]json.RawMessage
}

// Option is one choice of a select, an overflow menu or a group of buttons.
type Option struct {
	Text        Text   `json:"text"`
	Value       string `json:"value"`
	Description *Text  `json:"description,omitempty"`
}

// Confirm is what is asked before an element acts.
type Confirm struct {
	Title   Text   `json:"title"`
	Text    Text   `json:"text"`
	Confirm Text   `json:"confirm"`
	Deny    Text   `json:"deny"`
	Style   string `json:"style,omitempty"`
}

// UnmarshalJSON keeps what was sent beside what is read of it.
func (b *Block) UnmarshalJSON(data []byte) error {
	type plain Block
	if err := json.Unmarshal(data, (*plain)(b)); err != nil {
		return err
	}
	return json.Unmarshal(data, &b.raw)
}

// MarshalJSON is the block as it was sent, with the id it was given.
func (b Block) MarshalJSON() ([]byte, error) { return json.Marshal(b.raw) }

// UnmarshalJSON reads an element. A context's text is an element itself, its
// words where a button has a text object.
func (e *Element) UnmarshalJSON(data []byte) error {
	type plain Element
	if err := json.Unmarshal(data, (*plain)(e)); err != nil {
		return err
	}
	if err := json.Unmarshal(data, &e.raw); err != nil {
		return err
	}
	text, has := e.raw["text"]
	switch {
	case !has:
		return nil
	case e.Type == "mrkdwn" || e.Type == "plain_text":
		e.Text = &Text{Type: e.Type}
		return json.Unmarshal(text, &e.Text.Text)
	}
	return json.Unmarshal(text, &e.Text)
}

// MarshalJSON is the element as it was sent.
func (e Element) MarshalJSON() ([]byte, error) { return json.Marshal(e.raw) }

// How many blocks a surface takes (documented: Block Kit, blocks).
const (
	messageBlocks = 50
	viewBlocks    = 100
)

// blocks reads and judges the blocks of a call.
func (p *platform) blocks(text string, most int) ([]Block, answer) {
	if text == "" {
		return nil, nil
	}
	var list []Block
	if err := json.Unmarshal([]byte(text), &list); err != nil {
		return nil, explained("invalid_blocks_format", err.Error())
	}
	return p.judged(list, most)
}

// judged refuses blocks that break a rule, and gives an id to those without
// one (documented: Block Kit, blocks, block_id: made up where left out).
func (p *platform) judged(list []Block, most int) ([]Block, answer) {
	j := judge{}
	j.most("", "blocks", len(list), most)
	ids := map[string]bool{}
	for i := range list {
		at := fmt.Sprintf("/blocks/%d", i)
		j.block(at, list[i])
		if id := list[i].ID; id != "" && ids[id] {
			j.wrong(at, "block_id %q is there already", id)
		}
		ids[list[i].ID] = true
	}
	if len(j.found) > 0 {
		return nil, explained("invalid_blocks", j.found...)
	}
	for i := range list {
		if b := &list[i]; b.ID == "" {
			b.ID = p.blockID()
			b.raw["block_id"], _ = json.Marshal(b.ID) // a string: it cannot fail
		}
	}
	return list, nil
}

// blockID makes an id up. It takes the lock.
func (p *platform) blockID() string {
	p.mu.Lock()
	defer p.mu.Unlock()
	return fmt.Sprintf("b%04x", p.next())
}
