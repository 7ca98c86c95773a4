package practice

import (
	"fmt"
	"net/http"
	"strconv"
)

// changes tells a page that there is something newer to see than what it
// has, as server-sent events (WHATWG HTML, server-sent events). The page then
// asks for itself anew; nothing is told twice that way.
func (p *page) changes(w http.ResponseWriter, r *http.Request) {
	after := r.Header.Get("Last-Event-ID") // where a connection was lost
	if after == "" {
		after = r.FormValue("after")
	}
	seen, err := strconv.ParseInt(after, 10, 64)
	if err != nil {
		http.Error(w, "after which version?", http.StatusBadRequest)
		return
	}
	if seen > p.space.Snapshot().Version {
		seen = 0 // it was told so by a stand-in that is gone
	}
	w.Header().Set("Content-Type", "text/event-stream")
	flush := http.NewResponseController(w)
	for {
		if err := flush.Flush(); err != nil {
			return // nobody reads any more
		}
		if seen, err = p.space.Next(r.Context(), seen); err != nil {
			return
		}
		fmt.Fprintf(w, "id: %d\ndata: %d\n\n", seen, seen)
	}
}
