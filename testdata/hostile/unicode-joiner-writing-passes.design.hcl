# joiners belong to these ways of writing
design "می‌خواهم क्‍ष ❤️‍🔥" {}
