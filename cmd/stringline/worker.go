package main

import (
	"bufio"
	"context"
	"os"
	"runtime/debug"
	"strconv"

	"stringline/lint"
)

// workerArgument makes this program a worker, see isolation. It is no command
// for people.
const workerArgument = "codebook-apart"

// isWorker tells whether the process was started as a worker.
func isWorker(args []string) bool { return len(args) == 3 && args[1] == workerArgument }

// work is a worker's whole life: it limits itself, then runs the codebook that
// it is sent, until its pipe closes. memory is in bytes.
func work(memory string) int {
	most, err := strconv.ParseUint(memory, 10, 63)
	if err != nil || limitWorker(most) != nil {
		return 2
	}
	// The collector works harder before the limit is reached, where allocating
	// ends the process.
	debug.SetMemoryLimit(int64(most / 4 * 3))
	debug.SetMaxStack(int(min(most/4, 64<<20)))
	messages := make(chan []byte)
	go func() {
		in := bufio.NewReader(os.Stdin)
		for {
			message, err := receiveMessage(in)
			if err != nil {
				os.Exit(0) // nobody is there any more: what runs must not outlive its run
			}
			messages <- message
		}
	}()
	// It serves until something is wrong; a run that is over ends the process above.
	_ = lint.ServeCodebook(context.Background(),
		func() ([]byte, error) { return <-messages, nil },
		func(message []byte) error {
			if len(message) > lint.LongestMessage {
				return &sizeError{uint32(min(len(message), 1<<31))}
			}
			return sendMessage(os.Stdout, message)
		})
	return 2
}
