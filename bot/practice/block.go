package practice

import (
	"regexp"
	"slices"
	"strings"

	"heft/bot/standin"
)

// block is a block of a message, a front sheet or a form.
type block struct {
	Kind     string
	Head     []span // the first line of the desk's message, which alone is the answer
	Text     []span
	Fields   [][]span
	Elements []element
	Image    *image
	Input    *input
}

// lead takes the first line of a message out of its first block: it is shown
// as the answer.
func (b *builder) lead(list []standin.Block, shown []block) {
	if len(list) == 0 || list[0].Text == nil {
		return
	}
	first, rest, _ := strings.Cut(list[0].Text.Text, "\n")
	plain := list[0].Text.Plain()
	shown[0].Head, shown[0].Text = b.said(first, plain), nil
	if rest != "" {
		shown[0].Text = b.said(rest, plain)
	}
}

// image is a picture with its description. Only the workspace's own are
// shown: the page asks no other machine for anything.
type image struct {
	At, Alt       string
	To            string // where it is looked at alone
	Width, Height int    // zero where they are not known
}

// element is a part of a block that can be used, or words and pictures of a
// context.
type element struct {
	Kind    string
	ID      string // of one in a message
	Place   place
	Target  target
	Label   string
	To      string // where it leads, in the page
	Speak   string // what is read out instead of the label
	Style   string
	Options []standin.Option
	Chosen  string
	Confirm *standin.Confirm
	Text    []span
	Image   *image
}

// target is what an element belongs to: a message or a view.
type target struct{ Channel, TS, View, Block, Action string }

// form is a modal.
type form struct {
	Place               place
	Title, Submit, Deny string
	About               string // what it shows
	Blocks              []block
}

// input is one field of a modal.
type input struct {
	Name, Label, Hint, Value, Error string
	Lines, Required                 bool
	Options                         []standin.Option
}

// blocks are the blocks of something.
func (b *builder) blocks(list []standin.Block, on target) []block {
	out := make([]block, 0, len(list))
	for k, in := range list {
		on.Block = in.ID
		v := block{Kind: in.Type, Text: b.spoken(in.Text)}
		for _, f := range in.Fields {
			v.Fields = append(v.Fields, b.said(f.Text, f.Plain()))
		}
		for n, e := range in.Elements {
			shown := b.element(e, on)
			if on.TS != "" {
				shown.ID = buttonID(on.TS, k, n)
			}
			v.Elements = append(v.Elements, shown)
		}
		if in.Accessory != nil {
			v.Elements = append(v.Elements, b.element(*in.Accessory, on))
		}
		if in.Type == "image" {
			v.Image = b.pictured(in.AltText, in.File, on)
		}
		if in.Element != nil && in.Label != nil {
			v.Input = b.input(in)
		}
		out = append(out, v)
	}
	return out
}

func (b *builder) element(e standin.Element, on target) element {
	on.Action = e.ActionID
	v := element{
		Kind: e.Type, Place: b.place, Target: on, Speak: e.Label, Style: e.Style, Options: e.Options, Confirm: e.Confirm,
		Text: b.spoken(e.Text),
	}
	if e.URL != "" {
		v.To = b.leads(e.URL)
	}
	if e.Text != nil {
		v.Label = e.Text.Shown()
	}
	if e.Placeholder != nil {
		v.Label = e.Placeholder.Shown()
	}
	if v.Label == "" {
		v.Label = b.Say("choose")
	}
	if e.Chosen != nil {
		v.Chosen = e.Chosen.Value
	}
	if e.Type == "image" {
		v.Image = b.pictured(e.AltText, e.File, on)
	}
	return v
}

// archived is the address of a message (documented: chat.getPermalink).
var archived = regexp.MustCompile(`/archives/([A-Z0-9]+)/p(\d+)(\d{6})(?:\?|$)`)

// leads is the page that shows what an address of the workspace leads to. What
// is said in somebody else's conversation with the desk is not shown: it leads
// to one's own.
func (b *builder) leads(address string) string {
	at := archived.FindStringSubmatch(address)
	if at == nil {
		return b.place.To()
	}
	to := b.place
	to.Front, to.Job = false, "direct"
	if slices.Contains(jobs, at[1]) {
		to.Job = at[1]
	}
	return to.To() + "#" + anchor(at[2]+"."+at[3])
}

func (b *builder) pictured(alt string, file *standin.FileRef, on target) *image {
	if file == nil {
		return &image{Alt: alt}
	}
	f, _ := b.files(file.ID)
	width, height := sized(f)
	return &image{At: "/picture/" + file.ID, Alt: alt, To: b.look("/look/", file.ID, on.TS), Width: width, Height: height}
}

// input is a field, under the name of its block and action.
func (b *builder) input(in standin.Block) *input {
	v := &input{
		Name: in.ID + "/" + in.Element.ActionID, Label: in.Label.Shown(), Value: in.Element.Initial,
		Lines: in.Element.Multiline, Required: !in.Optional, Options: in.Element.Options,
	}
	if in.Hint != nil {
		v.Hint = in.Hint.Shown()
	}
	if in.Element.Chosen != nil {
		v.Value = in.Element.Chosen.Value
	}
	return v
}

// modal is what the desk asks the role in a form of its own, which stands where
// it was asked for alone.
func (b *builder) modal() *form {
	v, open := b.snap.Modals[b.role.User]
	if !open || b.elsewhere() {
		return nil
	}
	f := &form{Place: b.place, Submit: b.Say("send"), Deny: b.Say("close"), Blocks: b.blocks(v.Blocks, target{View: v.ID})}
	for to, text := range map[*string]*standin.Text{&f.Title: v.Title, &f.Submit: v.Submit, &f.Deny: v.Close} {
		if text != nil {
			*to = text.Shown()
		}
	}
	for _, bl := range f.Blocks {
		if bl.Input != nil {
			id, _, _ := strings.Cut(bl.Input.Name, "/")
			bl.Input.Error = v.Errors[id]
		}
	}
	if v.CallbackID == confirmForm {
		b.translate(f)
	}
	return f
}

// confirmForm is the form in which an answer is confirmed, as the app calls it.
const confirmForm = "confirm"

// translate puts the form that confirms an answer into the reader's language;
// it comes in the language of the ticket. What is confirmed stays as it was
// said.
func (b *builder) translate(f *form) {
	f.Title, f.About, f.Submit, f.Deny = b.Say("confirm"), b.Say("confirm.of"), b.Say("confirm.send"), b.Say("cancel")
	for _, bl := range f.Blocks {
		if bl.Input != nil {
			bl.Input.Label = b.Say("confirm.note")
		}
	}
}

// elsewhere says whether the role's form was asked for at another job.
func (b *builder) elsewhere() bool {
	s, ok := b.latest()
	return ok && s.channel != b.channel()
}
