bank "❤️️" {}
bank "❤‍‍" {}
