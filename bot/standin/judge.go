package standin

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"
)

// judge finds what is wrong with blocks, each finding with its place.
type judge struct{ found []string }

func (j *judge) wrong(at, format string, args ...any) {
	j.found = append(j.found, "[ERROR] "+fmt.Sprintf(format, args...)+" [json-pointer:"+at+"]")
}

func (j *judge) most(at, what string, n, most int) {
	if n > most {
		j.wrong(at, "%d %s, no more than %d allowed", n, what, most)
	}
}

func (j *judge) long(at, what, s string, most int) {
	if n := utf8.RuneCountInString(s); n > most {
		j.wrong(at, "%s has %d characters, must be no more than %d", what, n, most)
	}
}

// fields are what a block or an element may have; a bar marks what it must.
// (documented: Block Kit, the page of each block and element. Blocks that no
// bot of ours posts are refused: rich_text, table, video, file and others
// exist on the platform.)
var fields = map[string]string{
	"section": "type block_id text fields accessory expand",
	"header":  "type| text| block_id level",
	"divider": "type block_id",
	"context": "type elements| block_id",
	"actions": "type elements| block_id",
	"image":   "type alt_text| image_url slack_file title block_id",
	"input":   "type label| element| block_id hint optional dispatch_action",

	"button":           "type text| action_id value url style confirm accessibility_label",
	"static_select":    "type action_id placeholder options option_groups initial_option confirm focus_on_load",
	"overflow":         "type action_id options| confirm",
	"radio_buttons":    "type action_id options| initial_option confirm focus_on_load",
	"checkboxes":       "type action_id options| initial_options confirm focus_on_load",
	"plain_text_input": "type action_id initial_value multiline min_length max_length placeholder focus_on_load dispatch_action_config",
	"number_input":     "type action_id is_decimal_allowed| initial_value min_value max_value placeholder focus_on_load dispatch_action_config",
	"datepicker":       "type action_id initial_date placeholder confirm focus_on_load",
	"mrkdwn":           "type text| verbatim",
	"plain_text":       "type text| emoji",
}

// shape judges the fields of a block or an element by their names.
func (j *judge) shape(at, kind string, raw map[string]json.RawMessage) bool {
	known, ok := fields[kind]
	if !ok {
		j.wrong(at, "unsupported type: %q", kind)
		return false
	}
	may := strings.Fields(strings.ReplaceAll(known, "|", ""))
	for name := range raw {
		if !slices.Contains(may, name) {
			j.wrong(at, "%s has no field %q", kind, name)
		}
	}
	for _, name := range strings.Fields(known) {
		if must, ok := strings.CutSuffix(name, "|"); ok && raw[must] == nil {
			j.wrong(at, "%s: missing required field: %s", kind, must)
		}
	}
	return true
}

// Where which elements may stand (documented: Block Kit, block elements,
// works with blocks).
var placed = map[string]string{
	"section": "button static_select overflow radio_buttons checkboxes datepicker image",
	"actions": "button static_select overflow radio_buttons checkboxes datepicker",
	"context": "image mrkdwn plain_text",
	"input":   "plain_text_input number_input static_select radio_buttons checkboxes datepicker",
}

// block judges one block (documented: Block Kit, the page of each block).
func (j *judge) block(at string, b Block) {
	if !j.shape(at, b.Type, b.raw) {
		return
	}
	j.long(at, "block_id", b.ID, 255)
	switch b.Type {
	case "section":
		if b.Text == nil && len(b.Fields) == 0 {
			j.wrong(at, "section: text or fields is required")
		}
		j.text(at+"/text", b.Text, 3_000, false)
		j.most(at+"/fields", "fields", len(b.Fields), 10)
		for i := range b.Fields {
			j.text(fmt.Sprintf("%s/fields/%d", at, i), &b.Fields[i], 2_000, false)
		}
	case "header":
		j.text(at+"/text", b.Text, 150, true)
	case "context":
		j.most(at+"/elements", "elements", len(b.Elements), 10)
	case "actions":
		j.most(at+"/elements", "elements", len(b.Elements), 25)
	case "image":
		j.picture(at, b.ImageURL, b.AltText, b.File)
		j.text(at+"/title", b.Title, 2_000, true)
	case "input":
		j.text(at+"/label", b.Label, 2_000, true)
		j.text(at+"/hint", b.Hint, 2_000, true)
	}
	j.elements(at, b)
}

// elements judges what stands in a block. An action_id stands once in it
// (documented: Block Kit, block elements, action_id).
func (j *judge) elements(at string, b Block) {
	if (b.Type == "actions" || b.Type == "context") && len(b.Elements) == 0 {
		j.wrong(at+"/elements", "must have at least one element")
	}
	all := slices.Clone(b.Elements)
	for _, e := range []*Element{b.Accessory, b.Element} {
		if e != nil {
			all = append(all, *e)
		}
	}
	ids := map[string]bool{}
	for i, e := range all {
		place := fmt.Sprintf("%s/elements/%d", at, i)
		if !slices.Contains(strings.Fields(placed[b.Type]), e.Type) {
			j.wrong(place, "unsupported type: %q in %s", e.Type, b.Type)
			continue
		}
		j.element(place, e)
		if e.ActionID != "" && ids[e.ActionID] {
			j.wrong(place, "action_id %q is there already", e.ActionID)
		}
		ids[e.ActionID] = true
	}
}

// text judges a text object (documented: Block Kit, text object: 1 to 3,000
// characters, and less where a block says so).
func (j *judge) text(at string, t *Text, most int, plainOnly bool) {
	if t == nil {
		return
	}
	switch {
	case t.Type != "plain_text" && t.Type != "mrkdwn":
		j.wrong(at, "unsupported type: %q", t.Type)
	case plainOnly && !t.Plain():
		j.wrong(at, "must be plain_text")
	case t.Text == "":
		j.wrong(at, "must be more than 0 characters")
	}
	j.long(at, "text", t.Text, most)
}

func (j *judge) picture(at, address, alt string, file *FileRef) {
	if (address == "") == (file == nil) {
		j.wrong(at, "image: one of image_url and slack_file is required")
	}
	j.long(at, "image_url", address, 3_000)
	j.long(at, "alt_text", alt, 2_000)
}
