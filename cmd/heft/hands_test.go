package main

import (
	"context"
	"fmt"
	"net/url"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// atPhone opens the practice page on a phone.
func atPhone(t *testing.T) *crew {
	t.Helper()
	ctx, cancel := context.WithTimeout(browser(t), 90*time.Second)
	t.Cleanup(cancel)
	c := &crew{rehearsal: rehearsing(t), ctx: ctx}
	c.do(chromedp.EmulateViewport(390, 844))
	return c
}

// leave ends the program and the browser.
func (c *crew) leave() {
	c.Helper()
	c.do(chromedp.Navigate("about:blank"))
	c.end()
	chromedp.Cancel(c.ctx)
}

// card taps one of the ten, and waits until the page it leads to is live.
func (c *crew) card(n int, at string) {
	c.Helper()
	c.do(chromedp.Evaluate[chromedp.Void](fmt.Sprintf(`void document.querySelector(".try li:nth-child(%d) a").click()`, n)))
	c.holds(fmt.Sprintf(`location.href.includes(%q) && document.readyState === "complete" && !document.querySelector(".again")`, at))
}

// inView says that an element is on the screen, below the line on top.
func inView(element string) string {
	return fmt.Sprintf(`(e => { const r = e?.getBoundingClientRect(); return !!r && r.height > 0 && r.bottom <= innerHeight && r.top >= document.querySelector(".you").getBoundingClientRect().bottom - 1; })(%s)`, element)
}

const focused = `document.activeElement`

func found(where string) string { return fmt.Sprintf(`document.querySelector(%q)`, where) }

// What is done shows where one looks, is read out, and the focus is with it.
func TestWhatComesOfItIsInView(t *testing.T) {
	c := atPhone(t)
	c.do(chromedp.Navigate(c.url + "try/1?lang=en"))
	c.live()
	c.holds(focused + `.id === "write"`)
	c.holds(inView(focused))
	c.holds(`document.querySelector(".you").getBoundingClientRect().top === 0 && document.querySelector(".you").textContent.includes("Groundworker · Mill Lane")`)
	c.do(chromedp.KeyEvent("\r")) // Enter sends
	c.sees(newest+".desk .head", "plan on 1,950 lb")
	c.holds(inView(found(newest + ".desk .head")))
	c.holds(focused + `.matches("#tickets > li:first-child")`)
	c.holds(`document.querySelector("#said").textContent.includes("plan on 1,950 lb")`)
	// What was filled in was sent: a reload does not offer it again.
	c.do(chromedp.Reload())
	c.live()
	c.holds(`document.querySelector("#write").value === "" && document.querySelectorAll("#tickets > li").length === 1`)
	c.card(2, "draft=2")
	c.holds(focused + `.matches("#tickets .more textarea") && document.activeElement.value === "what about 16 ft"`)
	c.holds(inView(focused))
	c.do(chromedp.KeyEvent("\r"))
	c.sees(newest+".thread > li:last-child .desk .head", "14 in butt × 16 ft")
	c.holds(inView(found(newest + ".thread > li:last-child .head")))
	c.holds(focused + `.matches("#tickets .thread > li")`)
	c.taps("#switch button", "Switch the desk off and on")
	c.sees("#switch .told", "It forgot nothing.")
	c.holds(inView(found("#switch .told")))
	c.leave()
}

// holdsBack makes the page wait for the word that a form was taken, until
// window.go is called.
func (c *crew) holdsBack() {
	c.Helper()
	c.do(chromedp.Evaluate[chromedp.Void](`void (() => {
		const ask = window.fetch;
		window.fetch = async (to, how) => {
			const answer = await ask(to, how);
			if (how?.method === "post") await new Promise((go) => { window.go = go; });
			return answer;
		};
	})()`))
}

// Who goes on as somebody else before the word came that a ticket was taken
// does not find it in the box again.
func TestWhatWasSentIsNotInTheBoxAgain(t *testing.T) {
	c := atPhone(t)
	c.as("groundworker")
	c.holdsBack()
	c.do(chromedp.SendKeys(chromedp.CSS("#write"), "14 in red oak log 6 ft"), chromedp.Click(chromedp.CSS(".write .go")))
	c.sees(newest+".desk .head", "plan on 530 lb")
	c.holds(`document.querySelector("#write").value !== "" && !!window.go`) // not taken yet
	c.as("climber")
	c.holds(`document.querySelector("#write").value === ""`)
	c.leave()
}

// An answer that overtakes the word that its question was taken is led to all
// the same, here one for the asker alone, with what was asked.
func TestAnswerThatOvertakesItsQuestion(t *testing.T) {
	c := atPhone(t)
	c.as("groundworker")
	c.holdsBack()
	c.do(chromedp.SendKeys(chromedp.CSS("#write"), "14 in red oak log 6 ft"))
	c.taps(".write button", "Ask for me alone")
	c.sees(newest+".private .head", "plan on 530 lb")
	c.sees(newest+"[data-part=top] .body", "14 in red oak log 6 ft")
	c.holds(`document.querySelector("#write").value !== "" && !!window.go`) // not taken yet
	c.do(chromedp.Evaluate[chromedp.Void](`void window.go()`))
	c.holds(`document.querySelector("#write").value === "" && document.activeElement.matches("#tickets > li:first-child .thread > li")`)
	c.holds(inView(found(newest + ".private .head")))
	c.leave()
}

// The no stands by the button, once; the form that the arborist gets holds the
// focus, goes away by the keyboard, and gives the focus back.
func TestConfirmingByHand(t *testing.T) {
	c := atPhone(t)
	c.do(chromedp.Navigate(c.url + "try/7?lang=es"))
	c.live()
	c.sees("#first", "El número 7 se apoya en 4 y 5. Aquí está listo el número 4")
	c.holds(inView(found("#first")))
	c.do(chromedp.KeyEvent("\r"))
	c.sees(newest+".desk .head", "arborista @Inge")
	c.card(7, "draft=5")
	c.do(chromedp.KeyEvent("\r"))
	c.sees(newest+".desk .head", "hay que jalar")
	c.card(6, "groundworker")
	c.holds(`document.querySelector("#tickets .picture img")?.complete`) // it comes after the words, and what stands below it moves
	const button = `[...document.querySelectorAll("#tickets button")].find(e => e.textContent === "Confirmado en el sitio")`
	c.holds(inView(button) + ` && document.activeElement === ` + button)
	for range 2 {
		c.holds(`!document.querySelector("form[data-sending]")`) // a press while the last is on its way is none
		c.do(chromedp.Evaluate[chromedp.Void](`void (document.querySelector("#said").textContent = "")`), chromedp.KeyEvent("\r"))
		c.holds(`document.querySelector("#said").textContent.includes("Eso solo lo confirma")`)
		c.holds(inView(found(".slip.private")))
		c.holds(`document.querySelectorAll(".slip.private").length === 1`)
		c.holds(button + `.closest("li").nextElementSibling === document.querySelector(".slip.private").closest("li") && document.activeElement === ` + button)
	}
	c.card(7, "arborist")
	c.do(chromedp.KeyEvent("\r"))
	c.holds(`document.querySelector("#modal dialog")?.matches(":modal") && document.activeElement.matches("#modal textarea")`)
	for range 9 { // all the way round
		c.do(chromedp.KeyEvent("\t"))
		c.holds(focused + `.closest("dialog") || document.activeElement === document.body`) // the body is the browser's own bar
	}
	c.do(chromedp.KeyEvent("\x1b"))
	c.holds(`!document.querySelector("#modal dialog") && document.activeElement === ` + button)
	c.do(chromedp.KeyEvent("\r"))
	c.holds(focused + `.matches("#modal textarea")`)
	c.do(chromedp.SendKeys(chromedp.CSS("#modal textarea"), "despacio"))
	c.do(chromedp.Reload())
	c.live()
	c.holds(`document.querySelector("#modal textarea")?.value === "despacio" && document.querySelector("#modal dialog").matches(":modal")`)
	got, err := chromedp.Run(c.ctx, chromedp.Evaluate[string](`document.querySelector("#modal").innerText`))
	for _, want := range []string{"Confirmado en el sitio", "Una nota, si la hay", "Cancelar", "Confirmar"} {
		if err != nil || !strings.Contains(got, want) {
			t.Errorf("the form lacks %q: %q, %v", want, got, err)
		}
	}
	c.taps("#modal button", "Confirmar")
	c.sees(newest+".desk .context", "Confirmado en el sitio por")
	c.holds(`document.querySelector("#said").textContent.includes("Confirmado en el sitio por")`)
	c.holds(inView(found(newest+".desk .context:has(.name)")) + ` && document.activeElement !== document.body`)
	c.holds(inView(found(newest + ".desk .head"))) // what was confirmed stands over who did
	c.leave()
}

// A confirmation that shows before its form is gone leaves the focus with the
// answer, also where the page does not know any more what opened the form.
func TestAnswerThatOvertakesItsForm(t *testing.T) {
	c := atPhone(t)
	c.as("supervisor")
	c.asks("job: limit 2000 lb, arborist @Inge", "arborist @Inge")
	c.asks("red oak limb 10 in 20 ft, stand it up on a 2:1, tied 12 ft from the cut, block 20 ft above the cut, 20° above horizontal", "pull")
	c.as("arborist")
	c.taps("#tickets button", "Confirmed on site")
	c.holds(`document.querySelector("#modal dialog")?.matches(":modal")`)
	c.do(chromedp.Reload())
	c.live()
	c.do(chromedp.Evaluate[chromedp.Void](`void (() => {
		const ask = window.fetch;
		const asked = document.querySelector("#modal").innerHTML;
		const taken = new Promise((go) => { window.taken = go; });
		window.fetch = async (to, how) => {
			if (how?.method !== "post") await taken;
			const answer = await ask(to, how);
			if (how?.method !== "post") return answer;
			let page = await answer.text();
			while (!page.includes("Confirmed on site by") || page.includes("<dialog")) page = await (await ask(location.href)).text();
			setTimeout(window.taken, 50);
			return { ok: true, url: answer.url, text: async () => page.replace('<div id="modal">', '<div id="modal">' + asked) };
		};
	})()`))
	c.taps("#modal button", "Confirm")
	c.holds(`document.querySelector("#modal dialog") && document.querySelector("#tickets .desk .context .name")`)
	c.holds(`!document.querySelector("#modal dialog")`)
	c.holds(`document.activeElement.matches("#tickets .thread > li:has(.context .name)")`)
	c.holds(inView(found(newest + ".desk .context:has(.name)")))
	c.leave()
}

// What somebody else writes meanwhile does not move what one is at: not over
// it, where a new ticket comes, nor by what an answer brings below it.
func TestWhatOneIsAtStaysWhereItIs(t *testing.T) {
	c := atPhone(t)
	c.as("groundworker")
	c.asks("14 in red oak limb 22 ft, hitched at 35 ft", "plan on")
	const at = `[...document.querySelectorAll("#tickets button")].find(e => e.textContent === "Show the working")`
	c.do(chromedp.Evaluate[chromedp.Void](`void (e => { e.scrollIntoView({ block: "center" }); e.focus({ preventScroll: true }); window.was = e.getBoundingClientRect().top; })(` + at + `)`))
	for i, words := range []string{"14 in red oak log 8 ft", "red oak limb 10 in 20 ft, stand it up on a 2:1, tied 12 ft from the cut, block 20 ft above the cut, 20° above horizontal"} {
		// As another phone would, without this page's doing.
		c.do(chromedp.Evaluate[chromedp.Void](fmt.Sprintf(`void fetch("/say", { method: "post", body: new URLSearchParams({ lang: "en", who: "climber", job: %q, desk: "1", text: %q }) })`, quarry, words)))
		c.holds(fmt.Sprintf(`document.querySelectorAll("#tickets > li").length === %d && document.querySelector("#tickets > li .desk .head")`, i+2))
	}
	c.holds(`document.querySelector("#tickets .picture img")`)
	c.holds(`document.activeElement.textContent === "Show the working" && Math.abs(document.activeElement.getBoundingClientRect().top - window.was) < 2`)
	c.leave()
}

// What is asked back stands on the screen with all its buttons, the box is
// left, and the next of the ten is at hand.
func TestChoicesAreInView(t *testing.T) {
	c := atPhone(t)
	c.do(chromedp.Navigate(c.url + "try/3?lang=en"))
	c.live()
	c.do(chromedp.KeyEvent("\r"))
	c.sees(newest+".desk .head", "Which maple?")
	const last = `[...document.querySelectorAll("#tickets button")].find(e => e.textContent === "any maple")`
	c.holds(inView(last))
	c.holds(inView(found(newest + ".desk .head")))
	c.holds(found(".you .next") + `.textContent === "Next to try: 4 of 10"`) // it said "Now: 3 of 10" until then
	c.do(chromedp.Evaluate[chromedp.Void](`void document.querySelector(".you .next").click()`))
	c.holds(focused + `.id === "write" && document.activeElement.value.startsWith("job: site")`)
	c.leave()
}

// What is typed outlives another language, another role, a reload and a
// program that is gone; what is sent is gone.
func TestTypedWordsAreKept(t *testing.T) {
	c := atPhone(t)
	c.as("groundworker")
	c.asks("14 in red oak log 6 ft", "plan on")
	c.do(chromedp.SendKeys(chromedp.CSS("#write"), "half a question"))
	c.do(chromedp.Evaluate[chromedp.Void](`void document.querySelector("#tickets .more > summary").click()`))
	c.holds(focused + `.matches("#tickets .more textarea")`)
	c.do(chromedp.SendKeys(chromedp.CSS(newest+".more textarea"), "half a follow-up"))
	kept := `document.querySelector("#write").value === "half a question" && document.querySelector("#tickets .more[open] textarea")?.value === "half a follow-up"`
	for _, way := range []string{"a[hreflang=es]", "a.tab.climber", "a[hreflang=en]"} {
		c.do(chromedp.Evaluate[chromedp.Void](fmt.Sprintf(`void document.querySelector(%q).click()`, way)))
		c.holds(fmt.Sprintf(`document.querySelector(%q).matches("[aria-current]")`, way))
		c.live()
		c.holds(kept)
	}
	c.do(chromedp.Reload())
	c.live()
	c.holds(kept)
	// Shift with Enter begins a line; the tick is for one ticket.
	c.do(chromedp.Focus(chromedp.CSS("#write")), chromedp.KeyEvent("\r", chromedp.KeyModifiers(chromedp.ModifierShift)))
	c.holds(`document.querySelector("#write").value.includes("\n")`)
	c.taps(".write label", "For the desk")
	c.holds(`!document.querySelector(".write [name=desk]").checked`)
	c.taps(".write button", "Send")
	c.holds(`document.querySelectorAll("#tickets > li").length === 2 && document.querySelector("#write").value === "" && document.querySelector(".write [name=desk]").checked`)
	c.do(chromedp.Reload())
	c.live()
	c.holds(`document.querySelector("#write").value === "" && document.querySelector(".more[open] textarea")?.value === "half a follow-up"`)
	c.do(chromedp.SendKeys(chromedp.CSS("#write"), "into the void"))
	c.end()
	c.do(chromedp.Focus(chromedp.CSS("#write")), chromedp.KeyEvent("\r", chromedp.KeyModifiers(chromedp.ModifierCtrl)))
	c.sees(".write .told", "Not sent")
	c.holds(inView(found(".write .told")) + ` && document.querySelector("#write").value === "into the void"`)
	chromedp.Cancel(c.ctx)
}

// With letters of twice the size, and on the narrowest screen, nothing lies
// beside the page; what leads past the head shows when it has the focus.
func TestLargeLettersAndNarrowScreens(t *testing.T) {
	c := atPhone(t)
	c.as("supervisor")
	c.asks("14 in red oak limb 22 ft, hitched at 35 ft", "plan on")
	for _, lang := range []string{"en", "es"} {
		for _, size := range []struct {
			wide  int64
			times string
		}{{390, "200%"}, {195, "100%"}, {320, "100%"}} {
			c.do(chromedp.EmulateViewport(size.wide, 640), chromedp.Navigate(c.url+"?who=supervisor&job="+quarry+"&lang="+lang))
			c.live()
			c.do(chromedp.Evaluate[chromedp.Void](fmt.Sprintf(`void (document.documentElement.style.fontSize = %q)`, size.times)))
			over, err := chromedp.Run(c.ctx, chromedp.Evaluate[[]string](`[...document.querySelectorAll("body *")]
				.filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + .5 && !e.matches(".away, .skip")).map(e => e.outerHTML.slice(0, 120))`))
			if err != nil || len(over) > 0 {
				t.Errorf("%s at %d and %s: beside the page: %q, %v", lang, size.wide, size.times, over, err)
			}
			c.holds(`document.documentElement.scrollWidth <= document.documentElement.clientWidth`)
			c.holds(`document.querySelector(".skip").getBoundingClientRect().width <= 1`)
		}
	}
	c.do(chromedp.KeyEvent("\t"))
	c.holds(focused + `.matches(".skip") && document.activeElement.getBoundingClientRect().width > 48`)
	c.leave()
}

// The day sheet is near the top for a supervisor, and it, a picture and a form
// left behind lead back.
func TestWaysThereAndBack(t *testing.T) {
	c := atPhone(t)
	c.as("supervisor")
	c.asks("red oak limb 10 in 20 ft, stand it up on a 2:1, tied 12 ft from the cut, block 20 ft above the cut, 20° above horizontal", "it takes a pull of")
	day, err := chromedp.Run(c.ctx, chromedp.Evaluate[string](`document.querySelector("main .far a[href^='/day']").href`))
	if err != nil {
		t.Fatal(err)
	}
	c.do(chromedp.Navigate(day)) // a page without scripts cannot be waited for from within
	if got, err := chromedp.Run(c.ctx, chromedp.Evaluate[string](`document.querySelector("h1").textContent`)); err != nil || got != "Rigging day sheet" {
		t.Errorf("the day sheet says %q, %v", got, err)
	}
	c.taps("a", "Back to the tickets")
	c.sees(".you", "Supervisor · Quarry Road")
	c.live()
	c.holds(`!!document.querySelector(".picture")`)
	c.do(chromedp.Evaluate[chromedp.Void](`void document.querySelector(".picture").click()`))
	c.holds(`location.pathname.startsWith("/look/") && document.querySelector("main.look img")?.naturalWidth > 0`)
	c.taps("a", "Back to the tickets")
	c.sees(".you", "Supervisor · Quarry Road")
	c.live()
	c.taps(newest+"button", "Confirmed on site")
	c.holds(`!!document.querySelector("#modal dialog")`)
	c.do(chromedp.Navigate(c.url + "?who=supervisor&job=C0MILLLANE&lang=en"))
	c.live()
	c.holds(`!document.querySelector("#modal dialog") && !document.querySelector("[inert]")`)
	c.leave()
}

// A sixth ticket lays the oldest away, as does a page that is read anew, but
// not the one that somebody is at.
func TestOlderTicketsAreLaidAway(t *testing.T) {
	c := atPhone(t)
	c.as("groundworker")
	hang := func(words string) {
		t.Helper()
		c.sends(c.ctx, "say", url.Values{"who": {"climber"}, "job": {quarry}, "lang": {"en"}, "text": {words}})
		c.sees(newest+".body", words)
	}
	for n := range 5 {
		hang(fmt.Sprint("word ", n+1))
	}
	c.holds(`document.querySelector("#older").hidden && document.querySelectorAll("#tickets > li").length === 5`)
	c.do(chromedp.Evaluate[chromedp.Void](`void document.querySelector("#tickets > li:last-child .more > summary").click()`))
	c.holds(focused + `.matches("#tickets > li:last-child textarea")`)
	hang("word 6")
	c.holds(`document.querySelectorAll("#tickets > li").length === 6 && document.activeElement.matches("#tickets > li:last-child textarea")`)
	c.do(chromedp.Evaluate[chromedp.Void](`void document.querySelector("#tickets > li:last-child .more > summary").click()`), chromedp.Focus(chromedp.CSS("#write")))
	hang("word 7")
	c.holds(`document.querySelectorAll("#tickets > li").length === 5 && document.querySelectorAll("#older li.ticket").length === 2`)
	c.lacks("word 2")
	c.taps("#older > summary", "Older tickets")
	c.sees("#older .ticket:last-child .body", "word 1")
	c.leave()
}
