package slackchat

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"net/http"
	"path"
	"slices"
	"time"
)

// Limits of one call.
const (
	callTimeout = 15 * time.Second
	maxAnswer   = 1 << 20 // bytes
	usualAnswer = 4 << 10
)

var errLongAnswer = errors.New("the workspace's answer is too long")

// httpClient keeps a connection for every reply that may be under way: the
// default client keeps two and opens a new one for almost every reply.
func httpClient(workers int) *http.Client {
	t := http.DefaultTransport.(*http.Transport).Clone()
	t.MaxIdleConns, t.MaxIdleConnsPerHost, t.MaxConnsPerHost = workers, workers, workers
	return &http.Client{Transport: whole{t}, Timeout: callTimeout}
}

// whole reads every answer to its end. The library stops where the JSON
// stops, and a connection with so much as a line end left on it is closed
// instead of kept. What was posted is left out of the answer to it.
type whole struct{ http.RoundTripper }

// RoundTrip makes one call.
func (w whole) RoundTrip(req *http.Request) (*http.Response, error) {
	resp, err := w.RoundTripper.RoundTrip(req)
	if err != nil {
		return nil, err
	}
	defer resp.Body.Close()
	read := bytes.NewBuffer(make([]byte, 0, usualAnswer))
	n, err := read.ReadFrom(io.LimitReader(resp.Body, maxAnswer+1))
	if err == nil && n > maxAnswer {
		err = errLongAnswer
	}
	if err != nil {
		return nil, err
	}
	body := read.Bytes()
	if slices.Contains(posting, path.Base(req.URL.Path)) {
		body = withoutEcho(body)
	}
	resp.Body, resp.ContentLength = io.NopCloser(bytes.NewReader(body)), int64(len(body))
	return resp, nil
}

// posting are the methods that answer with the whole message again, as it was
// posted (platform documentation, chat.postMessage, chat.update).
var posting = []string{"chat.postMessage", "chat.update"}

// withoutEcho leaves the message out of the answer to its posting. The library
// would read it block by block, for nobody; and a block that it cannot read
// would make a reply that is there count as not posted.
func withoutEcho(body []byte) []byte {
	var answer map[string]json.RawMessage
	if json.Unmarshal(body, &answer) != nil {
		return body // the library says what is wrong with it
	}
	delete(answer, "message")
	short, err := json.Marshal(answer)
	if err != nil {
		return body
	}
	return short
}
