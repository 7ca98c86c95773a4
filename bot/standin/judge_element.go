package standin

import "fmt"

// element judges one element (documented: Block Kit, the page of each
// element).
func (j *judge) element(at string, e Element) {
	if !j.shape(at, e.Type, e.raw) {
		return
	}
	j.long(at, "action_id", e.ActionID, 255)
	j.text(at+"/placeholder", e.Placeholder, 150, true)
	switch e.Type {
	case "button":
		j.text(at+"/text", e.Text, 75, true)
		j.long(at, "value", e.Value, 2_000)
		j.long(at, "url", e.URL, 3_000)
		j.long(at, "accessibility_label", e.Label, 75)
		if e.Style != "" && e.Style != "primary" && e.Style != "danger" {
			j.wrong(at, "button: style %q", e.Style)
		}
	case "static_select":
		j.options(at, e.Options, 100)
	case "overflow":
		j.options(at, e.Options, 5)
	case "radio_buttons", "checkboxes":
		j.options(at, e.Options, 10)
	case "image":
		j.picture(at, e.ImageURL, e.AltText, e.File)
	case "mrkdwn", "plain_text":
		j.text(at+"/text", e.Text, 3_000, false)
	}
	j.confirm(at+"/confirm", e.Confirm)
}

// options judges the choices of an element (documented: Block Kit, option
// object).
func (j *judge) options(at string, list []Option, most int) {
	if len(list) == 0 {
		j.wrong(at, "must have at least one option")
	}
	j.most(at+"/options", "options", len(list), most)
	for i, o := range list {
		place := fmt.Sprintf("%s/options/%d", at, i)
		j.text(place+"/text", &o.Text, 75, false)
		j.text(place+"/description", o.Description, 75, false)
		j.long(place, "value", o.Value, 150)
	}
}

// confirm judges the question before an action (documented: Block Kit,
// confirmation dialog object).
func (j *judge) confirm(at string, c *Confirm) {
	if c == nil {
		return
	}
	j.text(at+"/title", &c.Title, 100, true)
	j.text(at+"/text", &c.Text, 300, false)
	j.text(at+"/confirm", &c.Confirm, 30, true)
	j.text(at+"/deny", &c.Deny, 30, true)
}
