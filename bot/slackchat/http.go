package slackchat

import (
	"bytes"
	"errors"
	"io"
	"net/http"
	"time"
)

// Limits of one call.
const (
	callTimeout = 15 * time.Second
	maxAnswer   = 1 << 20 // bytes; real answers have a few thousand
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
// instead of kept.
type whole struct{ http.RoundTripper }

// RoundTrip makes one call.
func (w whole) RoundTrip(req *http.Request) (*http.Response, error) {
	resp, err := w.RoundTripper.RoundTrip(req)
	if err != nil {
		return nil, err
	}
	defer resp.Body.Close()
	body, err := io.ReadAll(io.LimitReader(resp.Body, maxAnswer+1))
	if err == nil && len(body) > maxAnswer {
		err = errLongAnswer
	}
	if err != nil {
		return nil, err
	}
	resp.Body = io.NopCloser(bytes.NewReader(body))
	return resp, nil
}
