console.log(JSON.stringify([process.argv.slice(2), process.cwd(), process.env.INIT_CWD]))
process.exit(2)
