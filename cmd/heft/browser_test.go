package main

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// browser opens a headless one. A machine without fails the test, for the page
// is what people see of the practice; where the system's packages can be
// installed, as on a machine that only runs checks, it is installed first.
func browser(t *testing.T) context.Context {
	t.Helper()
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(chromium(t)))
	if os.Geteuid() == 0 {
		options = append(options, chromedp.NoSandbox) // it does not start as root otherwise
	}
	limit, cancel := context.WithTimeout(context.Background(), 2*time.Minute)
	t.Cleanup(cancel)
	for try := 1; ; try++ {
		allocator, release := chromedp.NewExecAllocator(limit, options...)
		ctx, closeTab := chromedp.NewContext(allocator)
		// A browser that dies as it starts says nothing of the page.
		if err := chromedp.Do(ctx); err != nil {
			closeTab()
			release()
			if try == 3 {
				t.Fatal(err)
			}
			t.Logf("the browser did not start, once more: %v", err)
			continue
		}
		t.Cleanup(release)
		t.Cleanup(closeTab)
		return ctx
	}
}

// chromium is the path of the browser.
func chromium(t *testing.T) string {
	t.Helper()
	find := func() string {
		for _, name := range []string{"chromium", "chromium-browser"} {
			if path, err := exec.LookPath(name); err == nil {
				return path
			}
		}
		return ""
	}
	path := find()
	if path == "" && os.Geteuid() == 0 {
		out, err := exec.Command("sh", "-c", "apt-get update -qq && apt-get install -y -qq chromium").CombinedOutput()
		t.Logf("installing chromium: %v\n%s", err, out)
		path = find()
	}
	if path == "" {
		t.Fatal("no chromium on this machine: apt-get install chromium")
	}
	return path
}

// TestPracticeInABrowser is a groundworker and a climber at one phone.
func TestPracticeInABrowser(t *testing.T) {
	r := rehearsing(t)
	ctx := browser(t)
	console := chromedp.Console(ctx)
	do := func(steps ...chromedp.Action[chromedp.Void]) {
		t.Helper()
		if err := chromedp.Do(ctx, steps...); err != nil {
			t.Fatalf("%v\n%s", err, r.err.String())
		}
	}
	// shown waits until the desk says something on the newest ticket, or until
	// it is read out.
	shown := func(where, words string) {
		t.Helper()
		do(chromedp.Poll[chromedp.Void](fmt.Sprintf(`[...document.querySelectorAll(%q)].some(e => e.textContent.includes(%q))`, where, words)))
	}
	const first = "#tickets > li:first-child "
	do(chromedp.EmulateViewport(360, 740), chromedp.Navigate(r.url), chromedp.WaitVisible(chromedp.CSS("#write")))
	do(chromedp.SendKeys(chromedp.CSS("#write"), "14 in red oak limb 22 ft, hitched at 35 ft"), chromedp.Click(chromedp.CSS(".write .go")))
	shown(first+".desk .head", "plan on")
	shown(first+".desk .head", "wraps")
	shown("#said", "plan on")
	// By the keyboard: open the follow-up, write, send with the control key.
	do(chromedp.Focus(chromedp.CSS(first+".more > summary")), chromedp.KeyEvent("\r"),
		chromedp.SendKeys(chromedp.CSS(first+".more textarea"), "what about 16 ft"),
		chromedp.KeyEvent("\r", chromedp.KeyModifiers(chromedp.ModifierCtrl)))
	shown(first+".desk .head", "14 in butt × 16 ft")
	do(chromedp.Click(chromedp.CSS("a.tab.climber")), chromedp.WaitVisible(chromedp.CSS("a.tab.climber[aria-current]")))
	if got, err := chromedp.Run(ctx, chromedp.TextContent(chromedp.CSS("#tickets"))); err != nil || !strings.Contains(got, "Rosa") || strings.Contains(got, "Correct it") {
		t.Errorf("the climber sees %q, %v", got, err)
	}
	r.fits(ctx)
	do(chromedp.Navigate("about:blank"))
	r.end()
	chromedp.Cancel(ctx)
	for m, err := range console {
		if err != nil {
			break // it was closed
		}
		t.Errorf("the console says: %s", m)
	}
}

// fits measures the page at the width of a small phone: nothing reaches over
// its edge, and what is touched is high enough for a glove (WCAG 2.2, 1.4.10
// and 2.5.5: 44 px; ours is 48), has a name to be read out, and stands out
// from its ground by 4.5 to 1 (1.4.3, with the formula of its glossary).
func (r *rehearsal) fits(ctx context.Context) {
	r.Helper()
	for what, find := range map[string]string{
		"too wide": `[...document.querySelectorAll("body *")].filter(e => e.getBoundingClientRect().right > 360.5 && !e.matches(".away, .skip"))`,
		"too low": `[...document.querySelectorAll("a:not(.picture), button, summary, textarea, select, label.tick")]
			.filter(e => { const h = e.getBoundingClientRect().height; return h > 0 && h < 47.5 && !e.matches(".skip") })`,
		"too pale": pale,
		"nameless": `[...document.querySelectorAll("textarea, select, input:not([type=hidden])")].filter(e => e.labels.length === 0 && !e.ariaLabel)`,
	} {
		found, err := chromedp.Run(ctx, chromedp.Evaluate[[]string](find+`.map(e => e.outerHTML.slice(0, 120))`))
		if err != nil || len(found) > 0 {
			r.Errorf("%s: %q, %v", what, found, err)
		}
	}
}

// pale finds elements with words of their own that do not stand out from the
// ground they lie on.
const pale = `(() => {
	const rgb = s => s.match(/[\d.]+/g).map(Number);
	const light = ([r, g, b]) => [r, g, b].map(c => c / 255).map(c => c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)
		.reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0);
	const ground = e => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor); if (c.length < 4 || c[3] > 0) return c; } return [255, 255, 255]; };
	return [...document.querySelectorAll("body *")].filter(e => e.checkVisibility() && [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim())).filter(e => {
		const [a, b] = [light(rgb(getComputedStyle(e).color)), light(ground(e))].sort((x, y) => y - x);
		return (a + 0.05) / (b + 0.05) < 4.5;
	});
})()`
